package noctuary.keep;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.zip.CRC32;

/** A file of the cache, whole or not at all. */
public final class KeptFile {
    /** Share of the memory that one file may take. */
    private static final int SHARE = 8;

    private KeptFile() {}

    /**
     * All of it.
     *
     * @throws IOException also for a link, and for what is larger than anything that was ever kept: a journal from elsewhere
     *     brings its own cache
     */
    public static byte[] read(Path place) throws IOException {
        if (!Files.isRegularFile(place, LinkOption.NOFOLLOW_LINKS)) {
            throw new NoSuchFileException(place.toString());
        }
        if (Files.size(place) > Runtime.getRuntime().maxMemory() / SHARE) {
            throw new IOException(place + " is too large");
        }
        return Files.readAllBytes(place);
    }

    /**
     * As {@link #read}, of what {@link #writeSummed} wrote.
     *
     * @throws IOException also when a single bit is another one
     */
    public static byte[] readSummed(Path place) throws IOException {
        byte[] all = read(place);
        int length = all.length - Long.BYTES;
        if (length < 0 || ByteBuffer.wrap(all).getLong(length) != sum(all, length)) {
            throw new IOException(place + " is damaged");
        }
        return Arrays.copyOf(all, length);
    }

    /** As {@link #write}, with a sum behind it that tells damage. */
    public static void writeSummed(Path place, byte[] content) {
        byte[] all = Arrays.copyOf(content, content.length + Long.BYTES);
        ByteBuffer.wrap(all).putLong(content.length, sum(content, content.length));
        write(place, all);
    }

    private static long sum(byte[] bytes, int length) {
        CRC32 crc = new CRC32();
        crc.update(bytes, 0, length);
        return crc.getValue();
    }

    /**
     * Does nothing where it cannot be written: a cache that is full or read-only costs time only. Nor where the folder is
     * a link, which may lead anywhere; a file that is one is replaced, not followed.
     */
    public static void write(Path place, byte[] content) {
        if (Files.isSymbolicLink(place.getParent())) {
            return;
        }
        Path draft = null;
        try {
            Files.createDirectories(place.getParent());
            draft = Files.createTempFile(place.getParent(), "draft", ".tmp");
            Files.write(draft, content);
            Files.move(draft, place, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            forget(draft);
        }
    }

    private static void forget(Path draft) {
        try {
            if (draft != null) {
                Files.deleteIfExists(draft);
            }
        } catch (IOException e) {
            return;
        }
    }
}
