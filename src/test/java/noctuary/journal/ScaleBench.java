package noctuary.journal;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How the time of a render grows with the journal: nothing changed, a note with other words, a note with other facts, every page again, each as a whole
 * process of the packed program with 512 MiB, beside the start of a Java that does nothing. {@code ScaleBench FOLDER
 * [ENTRIES…]}; journals are grown in the folder once and stay there. The first render of each, which lays the stars of
 * all frames on each other, is not counted.
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
        render(root, run -> {}, 1);
        double empty = seconds(nothing(), run -> {}, 4 * RUNS);
        OUT.printf("%d entries, %d frame records; empty Java %.3f s%n", entries, entries * GrownJournal.FRAMES, empty);
        tell("nothing changed", render(root, run -> {}, RUNS), empty);
        Path note = GrownJournal.note(root, entries / 2);
        String text = Files.readString(note);
        tell(
                "a note's words",
                render(root, run -> Files.writeString(note, text + "\nAdded line " + run + ".\n"), RUNS),
                empty);
        tell("a note's facts", render(root, run -> Files.writeString(note, guided(text, run)), RUNS), empty);
        Files.writeString(note, text);
        render(root, run -> {}, 1);
        tell("every page", render(root, run -> {}, 3, "--anew"), empty);
    }

    /** The note with another guiding error, which the pages of its rig and of its limits show too. */
    private static String guided(String note, int run) {
        return note.replaceFirst("rms: [0-9.]+", "rms: 1." + (run + 1));
    }

    private static void tell(String what, double seconds, double empty) {
        OUT.printf("  %-16s %7.3f s  %6.1f times an empty Java%n", what, seconds, seconds / empty);
    }

    private static double render(Path root, Preparation preparation, int runs, String... more) throws Exception {
        List<String> call = new ArrayList<>(List.of(LAUNCHER.toString(), "render", "--journal", root.toString()));
        call.addAll(List.of(more));
        return seconds(call, preparation, runs);
    }

    private static List<String> nothing() {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return List.of(java, "-Xshare:auto", "-cp", "target/test-classes", Nothing.class.getName());
    }

    /** Median. */
    private static double seconds(List<String> call, Preparation preparation, int runs) throws Exception {
        double[] seconds = new double[runs];
        for (int run = 0; run < runs; run++) {
            preparation.before(run);
            ProcessBuilder process =
                    new ProcessBuilder(call).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD);
            process.environment().put("JDK_JAVA_OPTIONS", "-Xmx512m");
            long started = System.nanoTime();
            int status = process.start().waitFor();
            seconds[run] = (System.nanoTime() - started) / 1e9;
            if (status > 1) {
                throw new IllegalStateException(call + " ended with " + status);
            }
        }
        Arrays.sort(seconds);
        return seconds[runs / 2];
    }
}
