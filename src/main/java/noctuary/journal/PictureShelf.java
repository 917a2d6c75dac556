package noctuary.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import noctuary.draw.Preview;
import noctuary.fits.FitsFile;
import noctuary.fits.FitsImage;
import noctuary.fits.UnreadableException;
import noctuary.image.Mosaic;
import noctuary.image.PictureFile;
import noctuary.image.PictureImage;
import noctuary.image.UnreadablePictureException;
import noctuary.measure.MeasuredFiles;
import noctuary.measure.Meter;
import noctuary.site.Former;
import noctuary.site.SiteContent.Picture;
import noctuary.site.SiteContent.Size;

/** Previews of frames, stacks and versions: made once for each content, then copied from the cache. */
final class PictureShelf {
    /** Raised whenever the same pixels give another picture. */
    private static final String ENGINE = "3";

    private static final int[] WIDTHS = {320, 800, 1600};

    private final Path cache;
    private final Path output;
    private final MeasuredFiles files;
    private final Former former;

    PictureShelf(Path cache, Path output, MeasuredFiles files, Former former) {
        this.former = former;
        this.cache = cache(cache);
        this.output = output;
        this.files = files;
    }

    /** Where pictures are kept below the cache's folder, each set under the identity of its source. */
    static Path cache(Path folder) {
        return folder.resolve("previews-" + ENGINE);
    }

    /**
     * Puts the picture of {@code source} into {@code folder} of the output as {@code name-WIDTH.jpg}.
     *
     * @return nothing when the source cannot be shown; why is said by its measurement
     */
    Optional<Picture> show(Path source, String folder, String name) throws IOException {
        Optional<String> digest = files.digest(source);
        if (digest.isEmpty()) {
            return Optional.empty();
        }
        Path shelf = cache.resolve(digest.get());
        try {
            return Optional.of(copy(shelf, folder, name));
        } catch (IOException | RuntimeException missingOrDamaged) {
            return make(source, shelf) ? Optional.of(copy(shelf, folder, name)) : Optional.empty();
        }
    }

    private Picture copy(Path shelf, String folder, String name) throws IOException {
        String[] lines = Files.readString(shelf.resolve("size.txt")).strip().split("\n");
        List<Size> sizes = new ArrayList<>();
        Files.createDirectories(output.resolve(folder));
        for (int i = 1; i < lines.length; i++) {
            int[] size = numbers(lines[i]);
            String path = folder + "/" + name + "-" + size[0] + ".jpg";
            if (!former.take(path, ENGINE + " " + shelf.getFileName(), output)) {
                Files.copy(shelf.resolve(size[0] + ".jpg"), output.resolve(path), StandardCopyOption.REPLACE_EXISTING);
            }
            sizes.add(new Size(path, size[0], size[1]));
        }
        int[] whole = numbers(lines[0]);
        return new Picture(whole[0], whole[1], sizes);
    }

    private static boolean make(Path source, Path shelf) throws IOException {
        try {
            if (Meter.isPicture(source)) {
                PictureImage picture = PictureFile.read(source);
                keep(shelf, picture.width(), picture.height(), Preview.ofPicture(picture, widths(picture.width())));
            } else {
                FitsImage image = FitsFile.read(source);
                Optional<Mosaic> mosaic = image.header().mosaic().map(c -> c.value());
                int width = image.planes().get(0).width();
                int height = image.planes().get(0).height();
                keep(shelf, width, height, Preview.ofLinear(image.planes(), mosaic, widths(width)));
            }
            return true;
        } catch (UnreadableException | UnreadablePictureException e) {
            return false;
        }
    }

    /** The wanted widths up to the source's own, which stands for the first one beyond it. */
    private static int[] widths(int sourceWidth) {
        List<Integer> widths = new ArrayList<>();
        for (int width : WIDTHS) {
            widths.add(Math.min(width, sourceWidth));
            if (width >= sourceWidth) {
                break;
            }
        }
        return widths.stream().mapToInt(Integer::intValue).toArray();
    }

    /** The list of sizes is written last: a shelf without it counts as empty. */
    private static void keep(Path shelf, int width, int height, List<Preview.Encoded> pictures) throws IOException {
        Files.createDirectories(shelf);
        StringBuilder sizes = new StringBuilder(width + " " + height + "\n");
        int last = 0;
        for (Preview.Encoded picture : pictures) {
            if (picture.width() == last) {
                continue;
            }
            last = picture.width();
            Files.write(shelf.resolve(picture.width() + ".jpg"), picture.bytes());
            sizes.append(picture.width()).append(' ').append(picture.height()).append('\n');
        }
        Files.writeString(shelf.resolve("size.txt"), sizes);
    }

    private static int[] numbers(String line) {
        String[] parts = line.split(" ");
        return new int[] {Integer.parseInt(parts[0]), Integer.parseInt(parts[1])};
    }
}
