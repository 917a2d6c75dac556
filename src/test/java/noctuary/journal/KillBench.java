package noctuary.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import noctuary.measure.FrameDraft;
import noctuary.measure.SmallJournal;

/**
 * Kills the packed jar's render at random moments, and lets it run into a full disk: the site that stands must be whole,
 * the old one or the new one, and frames as they were. A fifth as often renders of
 * other words, {@code begin}, {@code note} and {@code watch}.
 * {@code KillBench KILLS [FOLDER_ON_A_SMALL_DISK]}; prints what it counted and ends with
 * status 1 when a site was broken.
 */
final class KillBench {
    private static final int ENTRIES = 12;
    private static final Path JAR = Path.of("target", "noctuary.jar").toAbsolutePath();

    private final Path root;
    private int whole;
    private int renamed;
    private int broken;

    private KillBench(Path root) {
        this.root = root;
    }

    public static void main(String[] args) throws Exception {
        int kills = args.length > 0 ? Integer.parseInt(args[0]) : 200;
        Path folder = Files.createTempDirectory("kill");
        KillBench bench = new KillBench(folder.resolve("nights"));
        bench.killed(kills);
        KilledCommands others = new KilledCommands(folder, JAR);
        bench.reworded(kills / 5, kills);
        int torn = others.begin(kills / 5) + others.note(kills / 5) + bench.watched(kills / 5);
        System.out.printf(
                "killed %d: whole %d, old site whole under its other name %d, broken %d%n",
                kills, bench.whole, bench.renamed, bench.broken);
        boolean full = args.length < 2 || new KillBench(Path.of(args[1]).resolve("nights")).full();
        System.exit(bench.broken == 0 && torn == 0 && full ? 0 : 1);
    }

    private void killed(int kills) throws Exception {
        Random random = new Random(40);
        write(0);
        Map<Path, String> sources = KilledCommands.sources(root);
        long started = System.nanoTime();
        render().waitFor();
        long wholeRenderMs = (System.nanoTime() - started) / 1_000_000;
        for (int i = 1; i <= kills; i++) {
            write(i);
            Process process = render();
            process.waitFor(1 + (long) (random.nextDouble() * wholeRenderMs * 1.2), TimeUnit.MILLISECONDS);
            process.destroyForcibly().waitFor();
            look();
        }
        if (render().waitFor() != 0) {
            throw new IllegalStateException("the last render must succeed");
        }
        boolean untouched = sources.equals(KilledCommands.sources(root));
        System.out.printf("%d sources, by digest and time: %s%n", sources.size(), untouched ? "untouched" : "CHANGED");
        broken += untouched ? 0 : 1;
        try (Stream<Path> left = Files.list(root)) {
            left.filter(p -> p.getFileName().toString().startsWith(".output")).forEach(p -> broken++);
        }
    }

    /** Between two renders only the words of a note are others: every page must be whole, and nothing lie beside the site. */
    private void reworded(int kills, int edition) throws Exception {
        Random random = new Random(42);
        int before = broken;
        word(-1, edition);
        render().waitFor();
        word(0, edition);
        long started = System.nanoTime();
        render().waitFor();
        long renderMs = (System.nanoTime() - started) / 1_000_000;
        int fresh = 0;
        for (int i = 1; i <= kills; i++) {
            word(i, edition);
            Process process = render();
            process.waitFor(1 + (long) (random.nextDouble() * renderMs * 2), TimeUnit.MILLISECONDS);
            process.destroyForcibly().waitFor();
            String page = Files.readString(root.resolve("output/entries/e0/index.html"));
            boolean whole = page.matches("(?s).*words--?\\d+-end.*</html>\\s*")
                    && Files.readString(root.resolve("output/find/words.js")).endsWith("];\n");
            broken += whole ? 0 : 1;
            fresh += page.contains("words-" + i + "-end") ? 1 : 0;
            look();
            render().waitFor();
        }
        System.out.printf("other words, killed %d times: new %d, broken %d%n", kills, fresh, broken - before);
    }

    private void word(int i, int edition) throws IOException {
        List<String> note = new ArrayList<>(note(0, edition));
        note.add("words-" + i + "-end");
        Files.write(root.resolve("entries/e0/entry.md"), note);
    }

    /** While it watches: killed in its first render or in the one after a note was saved. */
    private int watched(int kills) throws Exception {
        Random random = new Random(41);
        int before = broken;
        for (int i = 1; i <= kills; i++) {
            write(1000 + i);
            Process process = command("watch", "--port", "0");
            Thread.sleep(random.nextInt(2500));
            write(2000 + i);
            process.waitFor(1 + random.nextInt(2500), TimeUnit.MILLISECONDS);
            process.destroyForcibly().waitFor();
            look();
        }
        System.out.printf("watch killed %d times: broken %d%n", kills, broken - before);
        return broken - before;
    }

    /** Fills the disk between two renders; the old site must stand, with exit status 2 and no stack trace. */
    private boolean full() throws Exception {
        write(0);
        if (render().waitFor() != 0) {
            throw new IllegalStateException("the disk is too small for one site");
        }
        Path ballast = root.resolve("ballast");
        try (var out = Files.newOutputStream(ballast)) {
            byte[] block = new byte[4096];
            while (true) {
                out.write(block);
            }
        } catch (IOException fullNow) {
            Files.write(root.resolve("entries/e0/entry.md"), note(0, 0));
        }
        Path said = Files.createTempFile("said", ".txt");
        int status = call("render")
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start()
                .waitFor();
        look();
        String text = Files.readString(said);
        System.out.printf("full disk: status %d, site whole %b, said: %s%n", status, whole == 1, text.strip());
        return status == 2 && whole == 1 && !text.contains("\tat ");
    }

    private void write(int edition) throws IOException {
        SmallJournal journal = new SmallJournal(root);
        for (int e = 0; e < ENTRIES; e++) {
            journal.file("e" + e + "/entry.md", note(e, edition).toArray(String[]::new));
            if (edition == 0) {
                journal.frame("e" + e, "a.fits", FrameDraft.stars(3, e).card("EXPTIME", "60.0"));
            }
        }
    }

    private static List<String> note(int e, int edition) {
        return List.of("---", "title: Entry " + e + " edition-" + edition + "-end", "frames: [a.fits]", "---", "");
    }

    /** All pages of entries of one edition, and none missing. */
    private void look() throws IOException {
        Path site = root.resolve("output");
        if (!Files.exists(site)) {
            try (Stream<Path> beside = Files.list(root)) {
                site = beside.filter(p -> p.getFileName().toString().endsWith("-old"))
                        .findFirst()
                        .orElse(site);
            }
            renamed += ofOneEdition(site) ? 1 : 0;
            broken += ofOneEdition(site) ? 0 : 1;
        } else {
            whole += ofOneEdition(site) ? 1 : 0;
            broken += ofOneEdition(site) ? 0 : 1;
        }
    }

    private static boolean ofOneEdition(Path site) throws IOException {
        TreeSet<String> editions = new TreeSet<>();
        for (int e = 0; e < ENTRIES; e++) {
            Path page = site.resolve("entries/e" + e + "/index.html");
            if (!Files.exists(page)) {
                return false;
            }
            editions.add(Files.readString(page).replaceAll("(?s).*?(edition-\\d+-end).*", "$1"));
        }
        return editions.size() == 1 && Files.exists(site.resolve("data/journal.json"));
    }

    private Process render() throws IOException {
        return command("render");
    }

    private Process command(String... command) throws IOException {
        return call(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private ProcessBuilder call(String... command) {
        List<String> words = new ArrayList<>(KilledCommands.java(JAR));
        words.addAll(List.of(command));
        words.addAll(List.of("--journal", root.toString()));
        return new ProcessBuilder(words);
    }
}
