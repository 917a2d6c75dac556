package noctuary.journal;

import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import noctuary.keep.Glance;

/** This very program: what was made by another may come out differently now. */
final class Program {
    private Program() {}

    /** Of the build and the memory it has: some pictures are compared only where there is enough. */
    static String identity() {
        return build() + " " + Runtime.getRuntime().maxMemory();
    }

    /** Of the file or folder it runs from and the Java under it. */
    static String build() {
        return code() + " " + Runtime.version();
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
