package noctuary.measure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Semaphore;
import java.util.function.Supplier;
import noctuary.image.PictureFile;

/** Lets files be measured side by side only while they fit into memory together. */
final class Headroom {
    private static final int UNIT = 1 << 20;
    /** Share of the memory that files may take. */
    private static final double SHARE = 0.8;
    /** Memory of a picture while it is measured, over that of its pixels. */
    private static final double MEASURED = 1.5;
    /** Memory over the file's length: its pixels, and four times as many where it is compressed. */
    private static final int PLAIN = 2;

    private static final int COMPRESSED = 8;

    private final int units;
    private final Semaphore free;

    /** @param bytes of memory that there are */
    Headroom(long bytes) {
        units = (int) Math.max(1, SHARE * bytes / UNIT);
        free = new Semaphore(units, true);
    }

    /** Does the work once there is room for the file; one that is larger than all of it goes alone. */
    <T> T with(Path file, Supplier<T> work) {
        int wanted = wanted(file);
        free.acquireUninterruptibly(wanted);
        try {
            return work.get();
        } finally {
            free.release(wanted);
        }
    }

    /** Megabytes that the file takes; all there are for one that is larger. */
    int wanted(Path file) {
        return (int) Math.min(units, bytes(file) / UNIT + 1);
    }

    /** Whether so many megabytes fit together. */
    boolean holds(int wanted) {
        return wanted <= units;
    }

    private static long bytes(Path file) {
        if (Meter.isPicture(file)) {
            return (long) (MEASURED * PictureFile.memory(file));
        }
        try {
            String name = file.getFileName().toString();
            return Files.size(file) * (name.endsWith("z") ? COMPRESSED : PLAIN);
        } catch (IOException e) {
            return 0;
        }
    }
}
