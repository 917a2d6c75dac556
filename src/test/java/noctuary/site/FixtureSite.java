package noctuary.site;

import java.io.IOException;
import java.nio.file.Path;

/** Writes the fixture's site with its pictures into a folder, to be looked at in a browser. */
final class FixtureSite {
    private FixtureSite() {}

    static Path write(Path output, boolean published, boolean beautiful) throws IOException {
        FixturePictures.write(output, beautiful);
        SiteWriter.write(Fixture.content(published), null, output);
        return output;
    }

    public static void main(String[] args) throws IOException {
        write(Path.of(args[0]), true, true);
    }
}
