package noctuary.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command {@code noctuary}. */
@Command(name = "noctuary", mixinStandardHelpOptions = true, description = "A learning notebook for deep-sky imagers.")
public final class Main implements Runnable {
    public static void main(String[] args) {
        System.exit(new CommandLine(new Main()).execute(args));
    }

    @Override
    public void run() {
        CommandLine.usage(this, System.out);
    }
}
