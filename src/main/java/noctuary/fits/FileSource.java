package noctuary.fits;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** A plain file: small pieces are read, large ones mapped. */
final class FileSource implements ByteSource {
    private static final int MAPPED_FROM = 1 << 20;
    private static final int WINDOW = 1 << 26;

    private final FileChannel channel;
    private final long size;
    private long position;
    private ByteBuffer window = ByteBuffer.allocate(0);
    private long windowStart;

    FileSource(Path file) throws IOException {
        channel = FileChannel.open(file, StandardOpenOption.READ);
        size = channel.size();
    }

    @Override
    public ByteBuffer next(int length) throws IOException {
        int there = (int) Math.min(length, size - position);
        long offset = position - windowStart;
        if (offset < 0 || offset + there > window.limit()) {
            openWindow(there);
            offset = 0;
        }
        ByteBuffer piece = window.slice((int) offset, there);
        position += there;
        return piece;
    }

    /** Headers come block by block and are read; data comes in larger pieces and is mapped. */
    private void openWindow(int wanted) throws IOException {
        windowStart = position;
        long left = size - position;
        if (wanted > HduScanner.BLOCK && left >= MAPPED_FROM) {
            window = channel.map(FileChannel.MapMode.READ_ONLY, position, Math.min(WINDOW, left));
            return;
        }
        ByteBuffer read = ByteBuffer.allocate(wanted);
        while (read.hasRemaining() && channel.read(read, position + read.position()) >= 0) {
            continue;
        }
        window = read.flip();
    }

    @Override
    public long skip(long length) {
        long there = Math.min(length, size - position);
        position += there;
        return there;
    }

    @Override
    public long remaining() {
        return size - position;
    }

    @Override
    public boolean isPlain() {
        return true;
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
