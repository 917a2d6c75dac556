package noctuary.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import noctuary.fact.Problem;
import noctuary.journal.Checking;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = {
            "Lists everything wrong or doubtful in notes, rigs, sites and frames, without writing a page.",
            "Faults (an input could not be used) make the exit status 1; notices (worth a look) do not."
        })
final class CheckCommand implements Callable<Integer> {
    @Mixin
    private JournalOption journal;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        Checking.Outcome outcome = Checking.check(
                journal.root(), ProgressLine.on(spec.commandLine().getErr()));
        List<Problem> faults = ProblemList.faults(outcome.problems());
        List<Problem> notices =
                outcome.problems().stream().filter(p -> !p.isFault()).toList();
        print(out, faults, "fault", "faults");
        print(out, notices, "notice", "notices");
        if (outcome.problems().isEmpty()) {
            out.println(ProblemList.count(outcome.entries(), "entry", "entries") + ", nothing to say");
        }
        return faults.isEmpty() ? 0 : 1;
    }

    private static void print(PrintWriter out, List<Problem> problems, String one, String many) {
        if (!problems.isEmpty()) {
            out.println(ProblemList.count(problems.size(), one, many) + ":");
            ProblemList.print(out, problems);
        }
    }
}
