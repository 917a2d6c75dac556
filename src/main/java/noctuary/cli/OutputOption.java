package noctuary.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** Where a command puts the site. */
final class OutputOption {
    @Option(
            names = "--output",
            paramLabel = "DIR",
            description = "where the site goes (default: output in the journal)")
    private Path output;

    Path site(Path root) {
        return output == null ? root.resolve("output") : output;
    }
}
