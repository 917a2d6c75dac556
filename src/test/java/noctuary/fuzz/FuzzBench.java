package noctuary.fuzz;

import java.nio.file.Files;
import java.nio.file.Path;

/**
 * {@code FuzzBench KIND FIRST_SEED SECONDS}: as many inputs of that kind (fits, pictures, notes, sites, values, pages,
 * kept, requests) as the time allows. Run it with a small heap, {@code -Xmx256m}, and a scratch folder in memory as {@code java.io.tmpdir}. Prints the number of inputs, the
 * slowest, and each finding with its seed; ends with status 1 after a finding.
 */
final class FuzzBench {
    private FuzzBench() {}

    public static void main(String[] args) throws Exception {
        Subject subject = subject(args[0], Files.createTempDirectory("fuzz"));
        long end = System.nanoTime() + Long.parseLong(args[2]) * 1_000_000_000L;
        FuzzRun run = new FuzzRun(subject);
        run.attack(
                Long.parseLong(args[1]),
                () -> System.nanoTime() < end && run.findings().size() < 40);
        run.findings().forEach(System.out::println);
        System.out.printf(
                "%s: %d inputs, seeds %s to %d, slowest step %d ms (seed %d), %d findings%n",
                subject.name(),
                run.inputs(),
                args[1],
                run.nextSeed(),
                run.slowestMs(),
                run.slowestSeed(),
                run.findings().size());
        System.exit(run.findings().isEmpty() ? 0 : 1);
    }

    static Subject subject(String kind, Path folder) throws Exception {
        Path demo = Path.of("").toAbsolutePath();
        return switch (kind) {
            case "fits" -> new FitsSubject(folder);
            case "pictures" -> new PictureSubject(folder);
            case "notes" -> new NoteSubject(demo, folder.resolve("notes"));
            case "sites" -> new SiteSubject(new NoteSubject(demo, folder.resolve("notes")), folder.resolve("site"));
            case "values" -> new ValueSubject(folder);
            case "pages" -> new PageSubject(folder);
            case "kept" -> new KeptSubject(folder);
            case "requests" -> new RequestSubject(folder);
            default -> throw new IllegalArgumentException(kind + " is no kind of input");
        };
    }
}
