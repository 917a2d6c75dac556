package noctuary.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import noctuary.fact.Problem;
import noctuary.journal.Progress;
import noctuary.journal.RefusedException;
import noctuary.journal.Reviewing;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "review",
        mixinStandardHelpOptions = true,
        description = {
            "Did it help? Compares two rigs or two sites, the night as the unit.",
            "One name alone is that of a change, as the pages changes/ list them.",
            "Says better, worse, no difference seen, too few nights, or confounded, and why."
        })
final class ReviewCommand implements Callable<Integer> {
    @Mixin
    private JournalOption journal;

    @Parameters(index = "0", paramLabel = "BEFORE", description = "a rig or a site; or a change, alone")
    private String before;

    @Parameters(index = "1", arity = "0..1", paramLabel = "AFTER", description = "another rig or site")
    private String after;

    @Option(names = "--json", description = "print one JSON object")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws RefusedException {
        PrintWriter err = spec.commandLine().getErr();
        Reviewing.Outcome outcome = review(journal.root(), ProgressLine.on(err));
        PrintWriter out = spec.commandLine().getOut();
        out.print(json ? outcome.json() + "\n" : Plain.text(outcome.table()));
        out.flush();
        List<Problem> faults = ProblemList.faults(outcome.problems());
        ProblemList.print(err, faults);
        return faults.isEmpty() ? 0 : 1;
    }

    private Reviewing.Outcome review(Path root, Progress progress) throws RefusedException {
        return after == null
                ? Reviewing.change(root, before, progress)
                : Reviewing.between(root, before, after, progress);
    }
}
