package noctuary.draw;

/** Which end of a line of text stands at its point. */
enum Anchor {
    START("start"),
    MIDDLE("middle"),
    END("end");

    private final String attribute;

    Anchor(String attribute) {
        this.attribute = attribute;
    }

    String attribute() {
        return attribute;
    }

    /** How wide a text anchored at {@code x} may be between 0 and the given edge. */
    double room(double x, double edge) {
        return switch (this) {
            case START -> edge - x;
            case MIDDLE -> 2 * Math.min(x, edge - x);
            case END -> x;
        };
    }

    /** Where a text of this width begins when anchored at {@code x}. */
    double from(double x, double width) {
        return switch (this) {
            case START -> x;
            case MIDDLE -> x - width / 2;
            case END -> x - width;
        };
    }
}
