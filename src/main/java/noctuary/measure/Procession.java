package noctuary.measure;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.BiConsumer;

/**
 * Files measured one behind the other: while one is measured the next is begun, so that the steps of which only one
 * core knows are spent beside those of the other; both share as many threads as there are cores. Never more are under
 * way than fit into memory together.
 */
public final class Procession {
    private static final int AT_ONCE = 2;

    private final BiConsumer<Path, Measurement> each;
    private final Headroom headroom;
    private final ForkJoinPool cores = new ForkJoinPool(Runtime.getRuntime().availableProcessors());
    private final Deque<Step> underWay = new ArrayDeque<>();
    private int taken;

    private record Step(Path file, int room, ForkJoinTask<Measurement> work) {}

    private Procession(BiConsumer<Path, Measurement> each, Headroom headroom) {
        this.each = each;
        this.headroom = headroom;
    }

    /** Hands out every file's measurement, in the order given and as soon as it and all before it are there. */
    public static void of(List<Path> files, BiConsumer<Path, Measurement> each) {
        of(files, each, new Headroom(Runtime.getRuntime().maxMemory()));
    }

    static void of(List<Path> files, BiConsumer<Path, Measurement> each, Headroom headroom) {
        if (files.size() == 1) {
            each.accept(files.get(0), Meter.measure(files.get(0)));
            return;
        }
        Procession procession = new Procession(each, headroom);
        try {
            files.forEach(procession::begin);
            procession.finish();
        } finally {
            procession.cores.shutdownNow();
        }
    }

    private void begin(Path file) {
        int room = headroom.wanted(file);
        while (!underWay.isEmpty() && (underWay.size() == AT_ONCE || !headroom.holds(taken + room))) {
            handOut();
        }
        taken += room;
        underWay.add(new Step(file, room, cores.submit(() -> Meter.measure(file))));
    }

    private void finish() {
        while (!underWay.isEmpty()) {
            handOut();
        }
    }

    private void handOut() {
        Step first = underWay.remove();
        Measurement measurement = first.work().join();
        taken -= first.room();
        each.accept(first.file(), measurement);
    }
}
