package noctuary.draw;

/** The part of a drawing where the numbers are plotted. */
record Box(double left, double top, double right, double bottom) {
    double width() {
        return right - left;
    }

    double height() {
        return bottom - top;
    }
}
