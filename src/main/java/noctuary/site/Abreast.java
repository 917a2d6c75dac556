package noctuary.site;

import java.io.IOException;
import java.util.List;
import java.util.SortedMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/** Work that need not wait for other work: begun in its order, done on all cores. */
public final class Abreast {
    /** One piece of it. */
    public interface Job {
        void run() throws IOException;
    }

    private final List<Job> jobs;
    private final AtomicInteger next = new AtomicInteger();
    private final SortedMap<Integer, IOException> faults = new ConcurrentSkipListMap<>();

    private Abreast(List<Job> jobs) {
        this.jobs = jobs;
    }

    /**
     * All of them, those that take long first, so that no core waits for them in the end.
     *
     * @throws IOException of several the one of the first job, when all others are done
     */
    public static void run(List<Job> jobs) throws IOException {
        Abreast work = new Abreast(jobs);
        int workers = ForkJoinPool.getCommonPoolParallelism() + 1;
        IntStream.range(0, workers).parallel().forEach(worker -> work.take());
        if (!work.faults.isEmpty()) {
            throw work.faults.get(work.faults.firstKey());
        }
    }

    private void take() {
        for (int at = next.getAndIncrement(); at < jobs.size(); at = next.getAndIncrement()) {
            try {
                jobs.get(at).run();
            } catch (IOException e) {
                faults.put(at, e);
            }
        }
    }
}
