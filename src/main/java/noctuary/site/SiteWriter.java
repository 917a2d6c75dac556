package noctuary.site;

import java.io.IOException;
import java.nio.file.Path;

/** Writes every page, asset and download into a folder. */
public final class SiteWriter {
    private SiteWriter() {}

    /**
     * @param ownTemplates the keeper's template folder, which may be missing; a file there replaces ours
     * @throws IOException when the folder cannot be written
     */
    public static void write(SiteContent content, Path ownTemplates, Path output) throws IOException {
        throw new IOException("not built yet: " + content + ownTemplates + output);
    }
}
