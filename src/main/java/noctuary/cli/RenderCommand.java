package noctuary.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import noctuary.fact.Problem;
import noctuary.journal.Progress;
import noctuary.journal.Rendering;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
        name = "render",
        mixinStandardHelpOptions = true,
        description = {
            "Reads the notes, measures frames that are new or changed, and writes the site.",
            "Notes and frames are only read. The old site is replaced when the new one is whole."
        })
final class RenderCommand implements Callable<Integer> {
    @Mixin
    private JournalOption journal;

    @Mixin
    private OutputOption output;

    @Option(names = "--anew", description = "writes every page again, though nothing may have changed")
    private boolean anew;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        Path root = journal.root();
        Path site = output.site(root);
        Progress progress = QuickLook.of(ProgressLine.on(err));
        Rendering.Outcome outcome;
        try {
            outcome = anew ? Rendering.anew(root, site, progress) : Rendering.render(root, site, progress);
        } catch (QuickLook.TooMuchException again) {
            return QuickLook.AGAIN;
        }
        tell(outcome, site.resolve("index.html").toString(), out, err);
        return ProblemList.faults(outcome.problems()).isEmpty() ? 0 : 1;
    }

    /** @param where the site can be looked at */
    static void tell(Rendering.Outcome outcome, String where, PrintWriter out, PrintWriter err) {
        List<Problem> faults = ProblemList.faults(outcome.problems());
        ProblemList.print(err, faults);
        int notices = outcome.problems().size() - faults.size();
        out.println(ProblemList.count(outcome.entries(), "entry", "entries") + ", "
                + ProblemList.count(outcome.files(), "file", "files") + ", "
                + (outcome.standing() ? "nothing changed" : outcome.measuredNow() + " measured now") + ": " + where);
        if (notices > 0) {
            out.println(ProblemList.count(notices, "notice", "notices") + "; 'noctuary check' lists them");
        }
    }
}
