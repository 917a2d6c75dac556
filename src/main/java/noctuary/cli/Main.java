package noctuary.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command {@code noctuary}. */
@Command(
        name = "noctuary",
        mixinStandardHelpOptions = true,
        version = "noctuary 0.1.0",
        description = "A learning notebook for people who photograph deep-sky objects from home.",
        synopsisSubcommandLabel = "COMMAND",
        footerHeading = "%nA first journal:%n",
        footer = {
            "  noctuary begin nights",
            "      lays out an empty journal in the folder nights",
            "  noctuary note --journal nights lights/*.fits",
            "      writes an entry from the headers of these frames",
            "  noctuary render --journal nights",
            "      measures what is new, writes nights/output/index.html",
            "",
            "Exit status: 0 done; 1 done, but some inputs had problems, each listed;",
            "2 the call itself was wrong."
        })
public final class Main implements Runnable {
    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    public static void main(String[] args) {
        System.exit(execute(new PrintWriter(System.out, true, StandardCharsets.UTF_8), errors(), args));
    }

    /** Runs one call and gives its exit status. */
    static int execute(PrintWriter out, PrintWriter err, String... args) {
        try {
            return Commands.under(new Main(), args)
                    .setOut(out)
                    .setErr(err)
                    .setParameterExceptionHandler(new WrongCall())
                    .setExecutionExceptionHandler(new Failure())
                    .execute(args);
        } catch (OutOfMemoryError | StackOverflowError e) {
            return Failure.report(e, err);
        }
    }

    @Override
    public void run() {
        throw new CommandLine.ParameterException(spec.commandLine(), "name a command.");
    }

    private static PrintWriter errors() {
        return new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    }
}
