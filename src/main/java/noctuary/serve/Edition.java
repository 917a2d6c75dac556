package noctuary.serve;

/** Counts the changes of the site; readers wait for the next one. */
final class Edition {
    private long number;

    synchronized long number() {
        return number;
    }

    synchronized void next() {
        number++;
        notifyAll();
    }

    /** The number once it differs from {@code seen}, or after {@code patienceMs}. */
    synchronized long after(long seen, long patienceMs) throws InterruptedException {
        if (number == seen) {
            wait(patienceMs);
        }
        return number;
    }
}
