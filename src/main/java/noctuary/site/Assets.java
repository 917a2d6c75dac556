package noctuary.site;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Style sheets and scripts: ours, each replaceable by a file of the same name in the keeper's folder. */
final class Assets {
    static final List<String> STYLESHEETS = List.of("assets/site.css", "assets/charts.css", "assets/sky.css");
    static final List<String> SCRIPTS =
            List.of("assets/site.js", "assets/zoom.js", "assets/sky.js", "assets/stars.js", "assets/find.js");

    static final List<String> ALL =
            Stream.of(STYLESHEETS, SCRIPTS).flatMap(List::stream).toList();

    private final Path own;

    Assets(Path ownTemplates) {
        this.own = ownTemplates;
    }

    void put(Draft draft) throws IOException {
        for (String name : ALL) {
            draft.put(name, read(name));
        }
    }

    byte[] read(String name) throws IOException {
        Path replacement = own == null ? null : own.resolve(name);
        if (replacement != null && Files.isRegularFile(replacement)) {
            return Files.readAllBytes(replacement);
        }
        try (InputStream in = Assets.class.getResourceAsStream(Templates.FOLDER + "/" + name)) {
            if (in == null) {
                throw new FileNotFoundException(name + " is missing from the program");
            }
            return in.readAllBytes();
        }
    }
}
