package noctuary.measure;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The identity of a file's bytes (SHA-256), and the cheap stamp that tells whether it may have changed. */
final class ContentIdentity {
    private static final int CHUNK = 1 << 20;

    private ContentIdentity() {}

    /** SHA-256 of the whole content, hex. */
    static String digest(Path file) throws IOException {
        MessageDigest sha = sha256();
        ByteBuffer chunk = ByteBuffer.allocateDirect(CHUNK);
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            while (channel.read(chunk.clear()) >= 0) {
                sha.update(chunk.flip());
            }
        }
        return HexFormat.of().formatHex(sha.digest());
    }

    /** Size, time of change to the nanosecond and the file system's key. */
    static String stamp(Path file) throws IOException {
        BasicFileAttributes a = Files.readAttributes(file, BasicFileAttributes.class);
        return a.size() + " " + a.lastModifiedTime().toInstant() + " " + a.fileKey();
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
