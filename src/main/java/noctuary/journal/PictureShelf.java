package noctuary.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import noctuary.draw.Canvas;
import noctuary.draw.Preview;
import noctuary.fits.FitsFile;
import noctuary.fits.FitsImage;
import noctuary.fits.UnreadableException;
import noctuary.image.Mosaic;
import noctuary.image.PictureFile;
import noctuary.image.PictureImage;
import noctuary.image.Plane;
import noctuary.image.Stretch;
import noctuary.image.UnreadablePictureException;
import noctuary.measure.MeasuredFiles;
import noctuary.measure.Meter;
import noctuary.site.Draft;
import noctuary.site.SiteContent.Picture;

/** Pictures of frames, stacks and versions: made once for each content, then shared with the cache. Safe for several threads. */
final class PictureShelf {
    /** Raised whenever the same pixels give another picture. */
    static final String ENGINE = "5";

    private final Path cache;
    private final Path home;
    private final Draft draft;
    private final MeasuredFiles files;

    PictureShelf(Path cache, Draft draft, MeasuredFiles files) {
        this.cache = cache(cache);
        this.home = cache;
        this.draft = draft;
        this.files = files;
    }

    /** Where pictures are kept below the cache's folder, each set under the identity of its source. */
    static Path cache(Path folder) {
        return folder.resolve("previews-" + ENGINE);
    }

    /**
     * Puts the picture of {@code source} into {@code folder} of the output.
     *
     * @return nothing when the source cannot be shown; why is said by its measurement
     */
    Optional<Picture> show(Path source, String folder, String name) throws IOException {
        Optional<String> digest = files.digest(source);
        return digest.isEmpty() ? Optional.empty() : show(source, digest.get(), folder, name);
    }

    /** As {@link #show(Path, String, String)}, of a source whose bytes have that identity. */
    Optional<Picture> show(Path source, String digest, String folder, String name) throws IOException {
        Shelf shelf = new Shelf(cache.resolve(digest));
        try {
            return Optional.of(placed(shelf, digest, folder, name));
        } catch (IOException | RuntimeException missingOrDamaged) {
            return made(source, shelf) ? Optional.of(placed(shelf, digest, folder, name)) : Optional.empty();
        }
    }

    private Picture placed(Shelf shelf, String digest, String folder, String name) throws IOException {
        Placing site = new Placing(home, draft, folder + "/" + name);
        Picture picture = shelf.add(site, folder, name);
        site.place("picture " + ENGINE + " " + digest);
        return picture;
    }

    /** One at a time: two large pictures may not fit into memory together. */
    private synchronized boolean made(Path source, Shelf shelf) throws IOException {
        try {
            if (Meter.isPicture(source)) {
                picture(PictureFile.read(source), shelf);
            } else {
                linear(FitsFile.read(source), shelf);
            }
            return true;
        } catch (UnreadableException | UnreadablePictureException e) {
            return false;
        }
    }

    private static void picture(PictureImage picture, Shelf shelf) throws IOException {
        int[] widths = Shelf.widths(picture.width());
        shelf.fill(
                picture.width(),
                picture.height(),
                Preview.ofPicture(picture, widths),
                wants(picture.width(), widths) ? Optional.of(Canvas.ofPicture(picture)) : Optional.empty());
    }

    private static void linear(FitsImage image, Shelf shelf) throws IOException {
        List<Plane> planes = image.planes();
        Optional<Mosaic> mosaic = image.header().mosaic().map(c -> c.value());
        int width = planes.get(0).width();
        int[] widths = Shelf.widths(width);
        Stretch stretch = Preview.stretch(planes, mosaic, widths);
        int finest = mosaic.isPresent() && planes.size() == 1 ? width / 2 : width;
        shelf.fill(
                width,
                planes.get(0).height(),
                Preview.ofLinear(planes, mosaic, stretch, widths),
                wants(finest, widths) ? Optional.of(Canvas.ofLinear(planes, mosaic, stretch)) : Optional.empty());
    }

    /** Whether the picture is larger than its largest preview. */
    private static boolean wants(int width, int[] widths) {
        return width > widths[widths.length - 1];
    }
}
