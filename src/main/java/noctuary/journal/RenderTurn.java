package noctuary.journal;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;

/**
 * One render of a journal at a time, over all processes: the next one waits. The system gives the turn back when a
 * process dies. Where the cache cannot be written to there is nothing to lock, and nothing that a render would share.
 */
final class RenderTurn {
    /** A file lock belongs to the whole process; threads of this one take turns here. */
    private static final ReentrantLock THREADS = new ReentrantLock(true);

    private final Optional<FileChannel> held;

    private RenderTurn(Optional<FileChannel> held) {
        this.held = held;
    }

    static RenderTurn take(Path cache) {
        THREADS.lock();
        return new RenderTurn(lock(cache));
    }

    private static Optional<FileChannel> lock(Path cache) {
        try {
            Files.createDirectories(cache);
            FileChannel channel =
                    FileChannel.open(cache.resolve("render.lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            channel.lock();
            return Optional.of(channel);
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    void end() {
        try {
            if (held.isPresent()) {
                held.get().close();
            }
        } catch (IOException e) {
            return;
        } finally {
            THREADS.unlock();
        }
    }
}
