package noctuary.journal;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How the time of a render grows with the journal: nothing changed, a note with other words, a note with other facts,
 * every page worked out and made again, every page again under another template, each as a whole process of the packed
 * program with 512 MiB, beside the start of a Java that does nothing. {@code ScaleBench FOLDER [ENTRIES…]}; journals are
 * grown in the folder once and stay there. The first render of each, which lays the stars of all frames on each other, is
 * not counted.
 */
final class ScaleBench {
    private static final int RUNS = 5;
    private static final Path LAUNCHER = Path.of("target", "noctuary").toAbsolutePath();
    private static final PrintStream OUT = System.out;

    private final Path folder;

    private ScaleBench(Path folder) {
        this.folder = folder;
    }

    /** An empty program. */
    static final class Nothing {
        private Nothing() {}

        public static void main(String[] args) {
            if (args.length > 0) {
                throw new IllegalArgumentException("nothing to do");
            }
        }
    }

    /** One call that is timed, and what makes it necessary. */
    private interface Preparation {
        void before(int run) throws IOException;
    }

    public static void main(String[] args) throws Exception {
        ScaleBench bench = new ScaleBench(Path.of(args[0]));
        int[] sizes = args.length > 1
                ? Arrays.stream(args).skip(1).mapToInt(Integer::parseInt).toArray()
                : new int[] {100, 1500};
        for (int entries : sizes) {
            bench.measure(entries);
        }
    }

    private void measure(int entries) throws Exception {
        Path root = folder.resolve("grown-" + entries);
        if (!Files.exists(root)) {
            GrownJournal.write(root, entries);
        }
        OUT.printf("%d entries, %d frame records%n", entries, entries * GrownJournal.FRAMES);
        render(root);
        time("nothing changed", root, run -> {});
        Path note = GrownJournal.note(root, entries / 2);
        String text = Files.readString(note);
        time("a note's words", root, run -> Files.writeString(note, text + "\nAdded line " + run + ".\n"));
        time("a note's facts", root, run -> Files.writeString(note, guided(text, run)));
        Files.writeString(note, text);
        render(root);
        time("every page anew", root, run -> {}, "--anew");
        Path layout = root.resolve("site-templates").resolve("layout.ftlh");
        Files.createDirectories(layout.getParent());
        time("every page", root, run -> Files.writeString(layout, layout(run)));
        Files.delete(layout);
        Files.delete(layout.getParent());
        render(root);
    }

    /** The layout of every page with another comment at its end. */
    private static String layout(int run) throws IOException {
        String ours = Files.readString(Path.of("site-templates", "layout.ftlh"));
        return ours.replace("</body>", "<!-- " + run + " --></body>");
    }

    /** The note with another guiding error, which the pages of its rig and of its limits show too. */
    private static String guided(String note, int run) {
        return note.replaceFirst("rms: [0-9.]+", "rms: 1." + (run + 1));
    }

    /** Each run right after some empty ones: a machine is not equally quick all the time. */
    private static void time(String what, Path root, Preparation preparation, String... more) throws Exception {
        double[] seconds = new double[RUNS];
        double[] times = new double[RUNS];
        double[] empty = new double[RUNS];
        for (int run = 0; run < RUNS; run++) {
            preparation.before(run);
            double[] starts = new double[RUNS];
            for (int k = 0; k < RUNS; k++) {
                starts[k] = seconds(nothing());
            }
            empty[run] = median(starts);
            seconds[run] = render(root, more);
            times[run] = seconds[run] / empty[run];
        }
        OUT.printf(
                "  %-16s %7.3f s, empty Java %.3f s, %6.1f times%n",
                what, median(seconds), median(empty), median(times));
    }

    private static double render(Path root, String... more) throws Exception {
        List<String> call = new ArrayList<>(List.of(LAUNCHER.toString(), "render", "--journal", root.toString()));
        call.addAll(List.of(more));
        return seconds(call);
    }

    private static List<String> nothing() {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return List.of(java, "-Xshare:auto", "-cp", "target/test-classes", Nothing.class.getName());
    }

    private static double seconds(List<String> call) throws Exception {
        ProcessBuilder process =
                new ProcessBuilder(call).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD);
        process.environment().put("JDK_JAVA_OPTIONS", "-Xmx512m");
        long started = System.nanoTime();
        int status = process.start().waitFor();
        if (status > 1) {
            throw new IllegalStateException(call + " ended with " + status);
        }
        return (System.nanoTime() - started) / 1e9;
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
