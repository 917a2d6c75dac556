package noctuary.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The commands that are called most, one after the other in one process: the build keeps the classes that they load in the
 * archive from which the launcher starts sooner. Of no use to a keeper.
 */
final class Rehearsal {
    private Rehearsal() {}

    /** @param args a frame, and a small journal, which gets a style sheet, with the path of one of its notes, which gets other words */
    public static void main(String[] args) throws IOException {
        call("measure", "--json", args[0]);
        call("measure", args[0]);
        call("render", "--journal", args[1]);
        call("render", "--journal", args[1], "--anew");
        call("render", "--journal", args[1]);
        restyle(Path.of(args[1], "site-templates", "assets", "site.css"));
        call("render", "--journal", args[1]);
        reword(Path.of(args[1], args[2]));
        call("render", "--journal", args[1]);
    }

    private static void restyle(Path sheet) throws IOException {
        Files.createDirectories(sheet.getParent());
        if (!Files.deleteIfExists(sheet)) {
            Files.writeString(sheet, "");
        }
    }

    private static void reword(Path note) throws IOException {
        String said = Files.readString(note);
        String more = "\nThe air was steady, [as before](entry.md).\n";
        Files.writeString(note, said.endsWith(more) ? said.substring(0, said.length() - more.length()) : said + more);
    }

    private static void call(String... args) {
        int status = Main.execute(new PrintWriter(Writer.nullWriter()), new PrintWriter(Writer.nullWriter()), args);
        if (status > 1) {
            throw new IllegalStateException(String.join(" ", args) + " ended with status " + status);
        }
    }
}
