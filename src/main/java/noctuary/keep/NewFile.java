package noctuary.keep;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** A file for the keeper to write on in: whole or not at all, and never in another one's place. */
public final class NewFile {
    private NewFile() {}

    /** @throws FileAlreadyExistsException when something has that name, a link included */
    public static void write(Path place, byte[] content) throws IOException {
        Path draft = place.resolveSibling("." + place.getFileName() + ".tmp");
        Files.createDirectories(place.getParent());
        Files.deleteIfExists(draft);
        try {
            Files.write(draft, content, StandardOpenOption.CREATE_NEW);
            put(draft, place);
        } finally {
            Files.deleteIfExists(draft);
        }
    }

    private static void put(Path draft, Path place) throws IOException {
        try {
            Files.createLink(place, draft);
        } catch (FileAlreadyExistsException e) {
            throw e;
        } catch (IOException | UnsupportedOperationException noLinksHere) {
            Files.move(draft, place);
        }
    }
}
