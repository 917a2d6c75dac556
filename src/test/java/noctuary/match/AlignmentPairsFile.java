package noctuary.match;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import noctuary.stars.Star;

/**
 * Writes the pairs of {@link AlignmentBench} for another program: arguments are the file, {@code whole} or
 * {@code cameras}, and the number of pairs. Lines begin with P (scale, rotation, mirrored, shift), F and T (x, y, flux
 * of the first and the second list, brightest first) or S (true places of shared stars in the first list).
 */
final class AlignmentPairsFile {
    private AlignmentPairsFile() {}

    public static void main(String[] arguments) throws IOException {
        boolean whole = arguments[1].equals("whole");
        Random random = new Random(whole ? AlignmentBench.WHOLE_SEED : AlignmentBench.CAMERAS_SEED);
        try (var out = new PrintWriter(Files.newBufferedWriter(Path.of(arguments[0])))) {
            for (int i = 0; i < Integer.parseInt(arguments[2]); i++) {
                write(out, whole ? StarPairs.whole(random) : StarPairs.cameras(random));
            }
        }
    }

    private static void write(PrintWriter out, StarPairs pair) {
        Alignment t = pair.truth();
        out.printf(
                Locale.ROOT,
                "P %.12g %.12g %d %.12g %.12g%n",
                t.scale(),
                t.rotationDeg(),
                t.mirrored() ? 1 : 0,
                t.shiftX(),
                t.shiftY());
        write(out, "F", pair.from());
        write(out, "T", pair.to());
        pair.shared().forEach(p -> out.printf(Locale.ROOT, "S %.6f %.6f%n", p.x(), p.y()));
    }

    private static void write(PrintWriter out, String mark, List<Star> stars) {
        stars.stream()
                .sorted((a, b) -> Double.compare(b.flux(), a.flux()))
                .forEach(s -> out.printf(Locale.ROOT, "%s %.6f %.6f %.6g%n", mark, s.x(), s.y(), s.flux()));
    }
}
