package noctuary.draw;

/** The d attribute of a path. */
final class Trace {
    private final StringBuilder d = new StringBuilder();

    Trace move(double x, double y) {
        return step('M', x, y);
    }

    Trace line(double x, double y) {
        return step('L', x, y);
    }

    /** Closes the outline. */
    Trace shut() {
        d.append('Z');
        return this;
    }

    boolean isEmpty() {
        return d.length() == 0;
    }

    @Override
    public String toString() {
        return d.toString();
    }

    private Trace step(char letter, double x, double y) {
        d.append(letter).append(Digits.coordinate(x)).append(' ').append(Digits.coordinate(y));
        return this;
    }
}
