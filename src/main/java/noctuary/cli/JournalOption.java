package noctuary.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import noctuary.journal.RefusedException;
import picocli.CommandLine.Option;

/** Which journal a command works on. */
final class JournalOption {
    @Option(
            names = "--journal",
            paramLabel = "DIR",
            defaultValue = ".",
            description = "the journal's folder, the one that holds entries/ (default: here)")
    private Path journal;

    Path root() throws RefusedException {
        if (!Files.isDirectory(journal.resolve("entries"))) {
            throw new RefusedException(journal.normalize()
                    + " holds no journal: there is no folder entries in it; 'noctuary begin DIR' lays one out");
        }
        return journal.toAbsolutePath().normalize();
    }
}
