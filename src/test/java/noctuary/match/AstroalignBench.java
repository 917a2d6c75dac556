package noctuary.match;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import noctuary.stars.Star;

/**
 * The pairs of {@link AlignmentBench} through Debian's python3-astroalign and through ours, side by side; run as a main
 * class on a quiet machine, in the project's folder. The first argument is the number of pairs a row, 300 unless given; the
 * second one of the rows {@code whole}, {@code cameras}, {@code unrelated}. A row takes the library some minutes.
 *
 * <p>Times are of the wall around the call alone: the library's in one Python that has it imported and called once, ours
 * warm in this process, and cold as the first call of a fresh one ({@value #COLD} pairs a row). The library seeks no
 * mirrored fields, so straight pairs are counted apart.
 */
final class AstroalignBench {
    private static final String SCRIPT = "src/test/python/astroalign_pairs.py";
    private static final int COLD = 20;
    private static final double GOOD_PX = 1;
    private static final double REFUSED = Double.POSITIVE_INFINITY;

    private AstroalignBench() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        if (arguments.length == 3) {
            StarPairs pair =
                    row(arguments[0], Integer.parseInt(arguments[1]) + 1).get(Integer.parseInt(arguments[1]));
            System.out.println(Tried.ours(pair).line());
            return;
        }
        int count = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 300;
        List<String> rows = arguments.length > 1 ? List.of(arguments[1]) : List.of("whole", "cameras", "unrelated");
        for (String row : rows) {
            List<StarPairs> pairs = row(row, count);
            pairs.forEach(Tried::ours);
            List<Tried> ours = pairs.stream().map(Tried::ours).toList();
            List<Tried> library = library(pairs);
            List<Tried> cold = new ArrayList<>();
            for (int i = 0; i < Math.min(COLD, count); i++) {
                cold.addAll(run(fresh(row, i)));
            }
            System.out.printf("%s, %d pairs, %d of them straight%n", row, count, straight(pairs).length);
            print("  astroalign", pairs, library);
            print("  ours, warm", pairs, ours);
            print("  ours, cold", pairs.subList(0, cold.size()), cold);
        }
    }

    private static List<StarPairs> row(String name, int count) {
        Random random = new Random(name.equals("cameras") ? AlignmentBench.CAMERAS_SEED : AlignmentBench.WHOLE_SEED);
        List<StarPairs> pairs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            StarPairs one = name.equals("cameras") ? StarPairs.cameras(random) : StarPairs.whole(random);
            pairs.add(
                    name.equals("unrelated")
                            ? new StarPairs(one.from(), StarPairs.whole(random).to(), one.truth(), List.of())
                            : one);
        }
        return pairs;
    }

    /**
     * @param errorPx infinite where refused, NaN for unrelated fields that were matched
     */
    private record Tried(double errorPx, double milliseconds) {
        static Tried ours(StarPairs pair) {
            long start = System.nanoTime();
            Optional<Alignment> found = Alignment.find(pair.from(), pair.to());
            double milliseconds = (System.nanoTime() - start) / 1e6;
            return new Tried(found.map(pair::errorPx).orElse(REFUSED), milliseconds);
        }

        static Tried of(String line) {
            String[] cells = line.split(" ");
            return new Tried(
                    cells[0].equals("refused") ? REFUSED : Double.parseDouble(cells[0]), Double.parseDouble(cells[1]));
        }

        String line() {
            return (errorPx == REFUSED ? "refused" : String.valueOf(errorPx)) + " " + milliseconds;
        }
    }

    private static void print(String name, List<StarPairs> pairs, List<Tried> tried) {
        double[] times =
                tried.stream().mapToDouble(Tried::milliseconds).sorted().toArray();
        int[] straight = straight(pairs);
        double[] good = Arrays.stream(straight)
                .mapToDouble(i -> tried.get(i).errorPx())
                .filter(e -> e < GOOD_PX)
                .toArray();
        System.out.printf(
                Locale.ROOT,
                "%s: %d of %d right, %d of the straight ones (rms error %.3f px); false or wrong %d;"
                        + " ms median %.2f, mean %.2f, 95th %.2f%n",
                name,
                tried.stream().filter(t -> t.errorPx() < GOOD_PX).count(),
                tried.size(),
                good.length,
                Math.sqrt(Arrays.stream(good).map(e -> e * e).average().orElse(Double.NaN)),
                tried.stream()
                        .filter(t -> t.errorPx() != REFUSED && !(t.errorPx() < GOOD_PX))
                        .count(),
                times[times.length / 2],
                Arrays.stream(times).average().orElse(Double.NaN),
                times[times.length * 95 / 100]);
    }

    private static int[] straight(List<StarPairs> pairs) {
        return IntStream.range(0, pairs.size())
                .filter(i -> !pairs.get(i).truth().mirrored())
                .toArray();
    }

    private static List<Tried> library(List<StarPairs> pairs) throws IOException, InterruptedException {
        Path file = Files.createTempFile("pairs", ".txt");
        try (var out = new PrintWriter(Files.newBufferedWriter(file))) {
            pairs.forEach(pair -> write(out, pair));
        }
        List<Tried> tried = run(List.of("/usr/bin/python3", SCRIPT, file.toString()));
        Files.delete(file);
        return tried;
    }

    private static List<String> fresh(String row, int number) {
        return List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                AstroalignBench.class.getName(),
                row,
                String.valueOf(number),
                "alone");
    }

    private static List<Tried> run(List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        List<Tried> tried = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                .lines()
                .map(Tried::of)
                .toList();
        if (process.waitFor() != 0) {
            throw new IOException(command.get(1) + " ended with " + process.exitValue());
        }
        return tried;
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
