package noctuary.fuzz;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;

/** Attacks one after the other, each watched: what is thrown and what takes too long is a finding. */
final class FuzzRun {
    static final long LIMIT_MS = 10_000;

    private final Subject subject;
    private final List<String> findings = new ArrayList<>();
    private volatile long started = System.nanoTime();
    private volatile long seed;
    private volatile boolean done;
    private volatile boolean judging;
    private long inputs;
    private long slowestMs;
    private long slowestSeed;

    FuzzRun(Subject subject) {
        this.subject = subject;
    }

    /** Seeds from {@code first} while {@code more} says so; ends early at a hang. */
    void attack(long first, BooleanSupplier more) throws InterruptedException {
        Thread worker = new Thread(() -> work(first, more), "fuzz");
        worker.setDaemon(true);
        worker.start();
        while (!done) {
            worker.join(100);
            if (!done && !judging && (System.nanoTime() - started) / 1_000_000 > LIMIT_MS) {
                StringBuilder where = new StringBuilder("hangs: ");
                for (StackTraceElement frame : worker.getStackTrace()) {
                    where.append(frame).append(' ');
                }
                findings.add(subject.name() + " seed " + seed + ": " + where);
                return;
            }
        }
    }

    private void work(long first, BooleanSupplier more) {
        for (seed = first; more.getAsBoolean(); seed++) {
            started = System.nanoTime();
            judging = false;
            attempt(() -> inputs += subject.attack(seed));
            long took = (System.nanoTime() - started) / 1_000_000;
            judging = true;
            if (took > slowestMs) {
                slowestMs = took;
                slowestSeed = seed;
            }
            attempt(() -> subject.judge(seed));
        }
        done = true;
    }

    private interface Step {
        void take() throws Throwable;
    }

    private void attempt(Step step) {
        try {
            step.take();
        } catch (Throwable finding) {
            findings.add(subject.name() + " seed " + seed + ": " + said(finding));
        }
    }

    private static String said(Throwable finding) {
        StringBuilder text = new StringBuilder(finding.toString());
        Throwable cause = finding;
        while (cause.getCause() != null) {
            cause = cause.getCause();
            text.append(" / ").append(cause);
        }
        for (int i = 0; i < Math.min(6, cause.getStackTrace().length); i++) {
            text.append("\n    ").append(cause.getStackTrace()[i]);
        }
        return text.toString();
    }

    List<String> findings() {
        return List.copyOf(findings);
    }

    long inputs() {
        return inputs;
    }

    long nextSeed() {
        return seed;
    }

    long slowestMs() {
        return slowestMs;
    }

    long slowestSeed() {
        return slowestSeed;
    }
}
