package noctuary.journal;

import java.io.IOException;
import java.nio.file.Path;

/** Renders again whenever notes, rigs, frames beside them or own templates change. */
public final class Watching {
    private static final long LOOK_EVERY_MS = 300;

    private Watching() {}

    /** Told what came of each render. */
    public interface Listener {
        void rendered(Rendering.Outcome outcome);

        /** The old site still stands. */
        void failed(Exception why);
    }

    /**
     * Renders at once, then after every change that has been quiet for a moment; ends when the thread is interrupted.
     *
     * @throws RefusedException when the very first render is refused, since waiting would not help
     */
    public static void watch(Path root, Path output, Progress progress, Listener listener) throws RefusedException {
        NoteStamps seen = NoteStamps.of(root);
        render(root, output, progress, listener, true);
        while (!Thread.currentThread().isInterrupted()) {
            NoteStamps now = quiet(root, seen);
            if (!now.equals(seen)) {
                seen = now;
                render(root, output, progress, listener, false);
            }
        }
    }

    /** Waits a moment, and on while files are still being written. */
    private static NoteStamps quiet(Path root, NoteStamps seen) {
        NoteStamps last = seen;
        while (true) {
            try {
                Thread.sleep(LOOK_EVERY_MS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return seen;
            }
            NoteStamps now = NoteStamps.of(root);
            if (now.equals(last)) {
                return now;
            }
            last = now;
        }
    }

    private static void render(Path root, Path output, Progress progress, Listener listener, boolean first)
            throws RefusedException {
        try {
            listener.rendered(Rendering.render(root, output, progress));
        } catch (RefusedException e) {
            if (first) {
                throw e;
            }
            listener.failed(e);
        } catch (IOException | RuntimeException e) {
            listener.failed(e);
        }
    }
}
