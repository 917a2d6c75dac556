package noctuary.site;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Files that are made and deleted, never written to: each may be one of another folder too. */
final class FreshFile {
    private static final int MOST_COMPARED = 1 << 26;

    private FreshFile() {}

    /** Makes it with its folders, in the place of another one; one with the same bytes is left. */
    static void put(Path file, ByteBuffer bytes) throws IOException {
        try {
            create(file, bytes.duplicate());
        } catch (FileAlreadyExistsException e) {
            if (!holds(file, bytes)) {
                Files.delete(file);
                create(file, bytes.duplicate());
            }
        } catch (NoSuchFileException e) {
            Files.createDirectories(file.getParent());
            create(file, bytes.duplicate());
        }
    }

    /** Deletes it and what folders it leaves empty, up to {@code top}; it may be gone already. */
    static void delete(Path file, Path top) throws IOException {
        Files.deleteIfExists(file);
        for (Path folder = file.getParent(); !folder.equals(top); folder = folder.getParent()) {
            if (isFull(folder)) {
                return;
            }
            Files.deleteIfExists(folder);
        }
    }

    private static boolean isFull(Path folder) throws IOException {
        try (var inside = Files.newDirectoryStream(folder)) {
            return inside.iterator().hasNext();
        } catch (NoSuchFileException gone) {
            return false;
        }
    }

    private static boolean holds(Path file, ByteBuffer bytes) throws IOException {
        return bytes.remaining() <= MOST_COMPARED
                && Files.size(file) == bytes.remaining()
                && ByteBuffer.wrap(Files.readAllBytes(file)).equals(bytes);
    }

    private static void create(Path file, ByteBuffer bytes) throws IOException {
        try (SeekableByteChannel channel =
                Files.newByteChannel(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
        }
    }
}
