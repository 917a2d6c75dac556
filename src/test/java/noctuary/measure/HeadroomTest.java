package noctuary.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HeadroomTest {
    @TempDir
    private Path folder;

    private Path picture;

    /** A megapixel of three colours at eight bits, which takes about 5 MB. */
    @BeforeEach
    void paint() throws IOException {
        picture = folder.resolve("a.png");
        ImageIO.write(new BufferedImage(1000, 1000, BufferedImage.TYPE_3BYTE_BGR), "png", picture.toFile());
    }

    @Test
    void whatFitsTogetherIsDoneTogether() throws Exception {
        assertThat(together(new Headroom(40 << 20))).isEqualTo(2);
    }

    @Test
    void whatDoesNotFitTogetherIsDoneInTurn() throws Exception {
        assertThat(together(new Headroom(10 << 20))).isEqualTo(1);
    }

    @Test
    void whatIsLargerThanEverythingGoesAlone() throws Exception {
        assertThat(together(new Headroom(1 << 20))).isEqualTo(1);
    }

    /** The most of two tasks that were in at once; each waits a while for the other. */
    private int together(Headroom headroom) throws Exception {
        AtomicInteger inside = new AtomicInteger();
        AtomicInteger most = new AtomicInteger();
        CountDownLatch both = new CountDownLatch(2);
        ExecutorService two = Executors.newFixedThreadPool(2);
        Runnable task = () -> headroom.with(picture, () -> {
            most.accumulateAndGet(inside.incrementAndGet(), Math::max);
            both.countDown();
            waitFor(both);
            return inside.decrementAndGet();
        });
        Future<?> first = two.submit(task);
        Future<?> second = two.submit(task);
        first.get();
        second.get();
        two.shutdown();
        return most.get();
    }

    private static void waitFor(CountDownLatch both) {
        try {
            both.await(300, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
