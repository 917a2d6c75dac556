package noctuary.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import noctuary.journal.Noting;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "note",
        mixinStandardHelpOptions = true,
        description = {
            "Writes a new entry for each target, night and rig among the frames.",
            "What the headers tell is filled in, what they cannot tell is asked. Calibration",
            "frames make no entry. A note that is there already is never overwritten."
        })
final class NoteCommand implements Callable<Integer> {
    @Mixin
    private JournalOption journal;

    @Parameters(
            arity = "1..*",
            paramLabel = "FRAMES",
            description = "FITS files, or folders of them, of one or more sessions")
    private List<Path> frames;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        Path root = journal.root();
        PrintWriter out = spec.commandLine().getOut();
        Noting.Outcome outcome = Noting.note(root, frames);
        outcome.written().forEach(note -> out.println("wrote " + note));
        outcome.existing().forEach(note -> out.println("left as it is: " + note));
        if (outcome.skipped() > 0) {
            out.println(ProblemList.count(outcome.skipped(), "calibration frame", "calibration frames") + " left out");
        }
        outcome.unreached().ifPresent(folder -> {
            out.println(
                    "The frames lie outside the journal, so the new notes only count them. To have them measured, write");
            out.println("  archive: {main: '" + folder + "'}");
            out.println("into " + root.resolve("entries/journal.yaml") + ", delete the new notes and note them again.");
        });
        ProblemList.print(spec.commandLine().getErr(), outcome.problems());
        return outcome.problems().isEmpty() ? 0 : 1;
    }
}
