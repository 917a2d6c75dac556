package noctuary.fits;

import java.io.IOException;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** Waits for a library that damaged bytes can send round in circles, but not for ever. */
final class Patience {
    private static final long LEAST_MS = 5_000;
    private static final long MS_PER_MEGAPIXEL = 2_000;

    private Patience() {}

    /** Some hundred times as long as decompressing so many pixels takes. */
    static long forPixels(double pixels) {
        return LEAST_MS + (long) (MS_PER_MEGAPIXEL * pixels / 1e6);
    }

    /** @throws UnreadableException when the work throws one, or takes longer than so many milliseconds */
    static <T> T within(long limitMs, Callable<T> work) throws IOException, UnreadableException {
        FutureTask<T> task = new FutureTask<>(work);
        Thread worker = new Thread(task, "tiles");
        worker.setDaemon(true);
        worker.start();
        try {
            return task.get(limitMs, TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            worker.interrupt();
            throw new UnreadableException(
                    "holds a compressed image whose tiles do not come to an end: it is damaged", Hdu.COPY_AGAIN);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted", e);
        } catch (ExecutionException e) {
            throw asItWas(e.getCause());
        }
    }

    private static IOException asItWas(Throwable thrown) throws UnreadableException {
        if (thrown instanceof UnreadableException refusal) {
            throw refusal;
        }
        if (thrown instanceof Error error) {
            throw error;
        }
        return new IOException(thrown);
    }
}
