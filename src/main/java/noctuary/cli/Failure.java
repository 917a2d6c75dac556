package noctuary.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import noctuary.journal.RefusedException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** What a keeper reads when a command could not do its work: a sentence, never a stack trace. */
final class Failure implements IExecutionExceptionHandler {
    static final int WRONG_CALL = 2;

    @Override
    public int handleExecutionException(Exception e, CommandLine line, ParseResult parsed) {
        line.getErr().println("noctuary: " + sentence(e));
        return WRONG_CALL;
    }

    /** Memory or stack that came to an end. */
    static int report(Error e, PrintWriter err) {
        err.println(
                "noctuary: this takes more memory than Java has; give it more with -Xmx. The journal's notes and frames"
                        + " are as they were");
        return WRONG_CALL;
    }

    static String sentence(Exception e) {
        if (e instanceof RefusedException) {
            return e.getMessage();
        }
        if (e instanceof NoSuchFileException missing) {
            return missing.getFile() + " does not exist";
        }
        if (e instanceof AccessDeniedException denied) {
            return denied.getFile() + " may not be read or written by this user";
        }
        if (e instanceof FileSystemException system && system.getReason() != null) {
            return system.getFile() + ": " + system.getReason();
        }
        if (e instanceof IOException) {
            return e.getMessage();
        }
        return "something that should not happen did: " + e.getClass().getSimpleName() + " (" + e.getMessage()
                + "); the journal's notes and frames are as they were. What .noctuary in it holds may be deleted, and"
                + " must be where the journal came from somebody else";
    }
}
