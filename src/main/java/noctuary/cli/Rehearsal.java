package noctuary.cli;

import java.io.PrintWriter;
import java.io.Writer;

/**
 * The commands that are called most, one after the other in one process: the build keeps the classes that they load in the
 * archive from which the launcher starts sooner. Of no use to a keeper.
 */
final class Rehearsal {
    private Rehearsal() {}

    /** @param args a frame, and a small journal */
    public static void main(String[] args) {
        call("measure", "--json", args[0]);
        call("measure", args[0]);
        call("render", "--journal", args[1]);
        call("render", "--journal", args[1], "--anew");
        call("render", "--journal", args[1]);
    }

    private static void call(String... args) {
        int status = Main.execute(new PrintWriter(Writer.nullWriter()), new PrintWriter(Writer.nullWriter()), args);
        if (status > 1) {
            throw new IllegalStateException(String.join(" ", args) + " ended with status " + status);
        }
    }
}
