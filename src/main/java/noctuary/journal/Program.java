package noctuary.journal;

import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import noctuary.keep.Glance;

/** This very program: what was made by another may come out differently now. */
final class Program {
    private Program() {}

    /** Of the file or folder it runs from, the Java under it and the memory it has. */
    static String identity() {
        return code() + " " + Runtime.version() + " " + Runtime.getRuntime().maxMemory();
    }

    private static String code() {
        CodeSource source = Program.class.getProtectionDomain().getCodeSource();
        try {
            Path place = Path.of(source.getLocation().toURI());
            return Files.isDirectory(place) ? Glance.ofTree(place, place) : Glance.at(place);
        } catch (URISyntaxException e) {
            throw new IllegalStateException("a program runs from somewhere", e);
        }
    }
}
