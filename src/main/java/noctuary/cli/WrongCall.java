package noctuary.cli;

import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What a keeper reads when the call itself is wrong: what of it, and how the command is called. */
final class WrongCall implements IParameterExceptionHandler {
    @Override
    public int handleParseException(ParameterException e, String[] args) {
        CommandLine command = e.getCommandLine();
        PrintWriter err = command.getErr();
        err.println("noctuary: " + sentence(e));
        if (command.getParent() != null) {
            err.print("Usage: " + command.getHelp().synopsis("Usage: ".length()));
            err.println("'" + command.getCommandSpec().qualifiedName() + " --help' explains it.");
        } else if (args.length == 0) {
            command.usage(err, Ansi.OFF);
        } else {
            err.println("'noctuary --help' lists the commands.");
        }
        err.flush();
        return Failure.WRONG_CALL;
    }

    private static String sentence(ParameterException e) {
        if (e instanceof UnmatchedArgumentException unmatched
                && !unmatched.getUnmatched().isEmpty()) {
            return unmatched(unmatched);
        }
        String told = e.getMessage()
                .replace(" is not an int", " is no whole number")
                .replaceFirst("^Missing required parameters?: (.*)$", "missing: $1");
        return Character.toLowerCase(told.charAt(0)) + told.substring(1);
    }

    private static String unmatched(UnmatchedArgumentException e) {
        String first = e.getUnmatched().get(0);
        String what = e.isUnknownOption()
                ? "there is no option " + first
                : e.getCommandLine().getParent() == null
                        ? "there is no command \"" + first + "\""
                        : "\"" + first + "\" is one argument too many";
        List<String> near = e.getSuggestions();
        return what + (near.isEmpty() ? "" : "; did you mean " + near.get(0).replaceFirst("^noctuary ", "") + "?");
    }
}
