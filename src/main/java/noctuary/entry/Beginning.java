package noctuary.entry;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import noctuary.keep.NewFile;

/** An empty journal with commented examples, and JSON Schemas by which editors complete and check the keys. */
public final class Beginning {
    private static final String ENTRIES = "entries";
    private static final List<String> FILES = List.of(
            "entries/journal.yaml",
            "entries/rigs/first-rig.md",
            "entries/sites/home.md",
            "entries/first-night.md.example",
            "schemas/entry.schema.json",
            "schemas/rig.schema.json",
            "schemas/site.schema.json",
            "schemas/journal.schema.json");

    private Beginning() {}

    /**
     * Writes the files of a new journal into a folder, which is made when it is not there.
     *
     * @return the files written, in order
     * @throws FileAlreadyExistsException when the folder already holds a journal or one of the files; nothing is
     * written
     * @throws IOException when a file cannot be written
     */
    public static List<Path> layOut(Path dir) throws IOException {
        if (Files.exists(dir) && !Files.isDirectory(dir)) {
            throw new FileSystemException(dir.toString(), null, "this is a file; name a folder");
        }
        refuseJournal(dir);
        List<Path> written = new ArrayList<>();
        for (String name : FILES) {
            Path file = dir.resolve(name);
            try (InputStream in = Beginning.class.getResourceAsStream("/noctuary/begin/" + name)) {
                if (in == null) {
                    throw new FileNotFoundException("this build lacks " + name);
                }
                NewFile.write(file, in.readAllBytes());
            }
            written.add(file);
        }
        return List.copyOf(written);
    }

    private static void refuseJournal(Path dir) throws IOException {
        for (String name : FILES) {
            if (Files.exists(dir.resolve(name))) {
                throw exists(dir, name);
            }
        }
        Path entries = dir.resolve(ENTRIES);
        if (Files.isDirectory(entries)) {
            try (Stream<Path> files = Files.walk(entries, 2)) {
                if (files.anyMatch(file -> file.toString().endsWith(".md"))) {
                    throw exists(dir, ENTRIES);
                }
            }
        }
    }

    private static FileAlreadyExistsException exists(Path dir, String name) {
        return new FileAlreadyExistsException(
                dir.resolve(name).toString(), null, "this folder already holds a journal; nothing was written");
    }
}
