package noctuary.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import noctuary.entry.Beginning;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "begin",
        mixinStandardHelpOptions = true,
        description = "Lays out an empty journal with commented examples; never overwrites a file.")
final class BeginCommand implements Callable<Integer> {
    @Parameters(paramLabel = "DIR", description = "the journal's folder, made when it is not there")
    private Path folder;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        Beginning.layOut(folder).forEach(file -> out.println("wrote " + file));
        out.println(
                "Next: name your rig and site there, and in journal.yaml, after archive:, the folder of your frames;");
        out.println("then 'noctuary note --journal " + folder + " FRAMES' after your next session.");
        return 0;
    }
}
