package noctuary.journal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import noctuary.draw.Canvas;
import noctuary.draw.Preview;
import noctuary.image.Affine;
import noctuary.image.SharedGrid;
import noctuary.image.Stretch;
import noctuary.measure.SampleStars;
import noctuary.measure.SkyMatch;

/** The pictures of one target's attempts on their grid, kept for as long as files and alignment stay the same. */
final class SkyShelf {
    /** Raised whenever the same pixels and the same alignment give another picture. */
    static final String ENGINE = "2";

    /** Width at which each attempt's stretch is fitted. */
    private static final int FITTED = 1600;

    private final Path home;
    private final Path folder;
    private final SkyFrame frame;

    SkyShelf(Path cache, String target, SkyFrame frame) {
        this.home = cache.resolve("skies-" + ENGINE + "-" + PictureShelf.ENGINE).resolve(target);
        this.folder = home.resolve(key(frame));
        this.frame = frame;
    }

    Shelf alike(SkyAttempt attempt) {
        return new Shelf(folder.resolve(attempt.slug()).resolve("alike"));
    }

    Shelf own(SkyAttempt attempt) {
        return new Shelf(folder.resolve(attempt.slug()).resolve("own"));
    }

    void addStar(SkyAttempt attempt, int number, Placing site, String to) {
        site.add(star(attempt, number), to);
    }

    private Path star(SkyAttempt attempt, int number) {
        return folder.resolve(attempt.slug()).resolve("star-" + number + ".jpg");
    }

    /** Whether a common stretch is fair to it: linear light whose ratio to the reference's is known. */
    boolean hasAlike(SkyAttempt attempt) {
        return comparable(attempt)
                && frame.laid().keySet().stream().filter(this::comparable).count() > 1;
    }

    private boolean comparable(SkyAttempt attempt) {
        boolean mosaic = attempt.measurement().planes().size() == 1
                && attempt.measurement().header().flatMap(h -> h.mosaic()).isPresent();
        return !frame.reference().finished()
                && !attempt.finished()
                && !mosaic
                && frame.laid().get(attempt).light().isPresent();
    }

    /** Makes every picture, and forgets those of earlier alignments. One attempt's pixels are in memory at a time. */
    void fill() throws IOException {
        if (Files.isDirectory(home)) {
            FolderTree.delete(home);
        }
        double width = StarCuts.widthOnReference(frame.laid());
        Map<SkyAttempt, Stretch> stretches = new HashMap<>();
        List<SkyAttempt> alike = new ArrayList<>();
        for (SkyAttempt attempt : frame.laid().keySet()) {
            SkyPixels pixels = SkyPixels.read(attempt);
            Optional<Stretch> own = attempt.finished() ? Optional.empty() : Optional.of(fitted(attempt, pixels));
            fill(own(attempt), attempt, pixels, own);
            own.ifPresent(stretch -> stretches.put(attempt, stretch));
            if (hasAlike(attempt)) {
                alike.add(attempt);
            }
            cutStars(attempt, pixels, width);
        }
        fillAlike(alike, stretches);
    }

    private Stretch fitted(SkyAttempt attempt, SkyPixels pixels) {
        SharedGrid small = frame.grid().toWidth(FITTED);
        Canvas linear = Canvas.laid(pixels.planes(), toPlanes(attempt, pixels), small, Optional.empty(), 1);
        return Stretch.of(linear.rows(0, small.height()));
    }

    private void fillAlike(List<SkyAttempt> attempts, Map<SkyAttempt, Stretch> own) throws IOException {
        double[] lights = attempts.stream()
                .mapToDouble(a -> frame.laid().get(a).light().orElseThrow())
                .toArray();
        List<Stretch> alike = attempts.isEmpty()
                ? List.of()
                : Stretch.alike(attempts.stream().map(own::get).toList(), lights);
        for (int i = 0; i < attempts.size(); i++) {
            fill(alike(attempts.get(i)), attempts.get(i), SkyPixels.read(attempts.get(i)), Optional.of(alike.get(i)));
        }
    }

    private void fill(Shelf shelf, SkyAttempt attempt, SkyPixels pixels, Optional<Stretch> stretch) throws IOException {
        SharedGrid grid = frame.grid();
        Affine toPlanes = toPlanes(attempt, pixels);
        List<Preview.Encoded> previews = new ArrayList<>();
        int[] widths = Shelf.widths(grid.width());
        for (int width : widths) {
            previews.add(
                    Preview.of(Canvas.laid(pixels.planes(), toPlanes, grid.toWidth(width), stretch, pixels.white())));
        }
        Optional<Canvas> whole = grid.width() > widths[widths.length - 1]
                ? Optional.of(Canvas.laid(pixels.planes(), toPlanes, grid, stretch, pixels.white()))
                : Optional.empty();
        shelf.fill(grid.width(), grid.height(), previews, whole);
    }

    private Affine toPlanes(SkyAttempt attempt, SkyPixels pixels) {
        return pixels.toPlanes().after(frame.laid().get(attempt).toReference().inverse());
    }

    private void cutStars(SkyAttempt attempt, SkyPixels pixels, double widthOnReference) throws IOException {
        double scale = Math.sqrt(frame.laid().get(attempt).toReference().area());
        List<Optional<SampleStars.Sample>> samples = SampleStars.of(attempt.measurement());
        for (int i = 0; i < samples.size(); i++) {
            if (samples.get(i).isPresent()) {
                Files.createDirectories(star(attempt, i).getParent());
                SharedFile.write(
                        star(attempt, i),
                        StarCuts.cut(attempt, pixels, samples.get(i).get(), widthOnReference / scale));
            }
        }
    }

    private static String key(SkyFrame frame) {
        StringBuilder text = new StringBuilder(frame.grid().toString())
                .append(frame.reference().slug());
        for (Map.Entry<SkyAttempt, SkyMatch> each : frame.laid().entrySet()) {
            text.append('\n')
                    .append(each.getKey().slug())
                    .append(' ')
                    .append(each.getKey().digest());
            text.append(' ').append(each.getValue());
            text.append(' ').append(SampleStars.of(each.getKey().measurement()));
        }
        try {
            byte[] digest =
                    MessageDigest.getInstance("SHA-256").digest(text.toString().getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest, 0, 16);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
