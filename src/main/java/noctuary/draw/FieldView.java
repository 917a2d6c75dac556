package noctuary.draw;

/**
 * A field of pixels laid on the drawing.
 *
 * @param unitsPerPx drawing units for one pixel
 * @param upward whether y of the field grows upward on the screen: so for a frame of the sky, whose first row is shown
 *     at the bottom; not for a picture, whose first row is at the top
 */
record FieldView(int widthPx, int heightPx, double left, double top, double unitsPerPx, boolean upward) {
    FieldView {
        if (widthPx < 1 || heightPx < 1) {
            throw new IllegalArgumentException("a field of " + widthPx + " x " + heightPx + " pixels");
        }
    }

    /** The field fitted into a width and a greatest height, kept in proportion. */
    static FieldView within(int widthPx, int heightPx, Box room, boolean upward) {
        double scale = Math.min(room.width() / widthPx, room.height() / heightPx);
        double left = room.left() + (room.width() - widthPx * scale) / 2;
        return new FieldView(widthPx, heightPx, left, room.top(), scale, upward);
    }

    /** Where a pixel coordinate falls; the outer edges of the field are at -0.5 and its size - 0.5. */
    double x(double px) {
        return left + (px + 0.5) * unitsPerPx;
    }

    double y(double px) {
        double fromTop = upward ? heightPx - (px + 0.5) : px + 0.5;
        return top + fromTop * unitsPerPx;
    }

    double width() {
        return widthPx * unitsPerPx;
    }

    double height() {
        return heightPx * unitsPerPx;
    }

    void frame(Svg svg) {
        svg.rect("frame", left, top, width(), height());
    }

    /** A line of the given length through a point, turned as an axis of the field is turned. */
    void whisker(Svg svg, String classes, double atX, double atY, double length, double angleDeg) {
        double angle = Math.toRadians(angleDeg);
        double dx = length / 2 * Math.cos(angle);
        double dy = length / 2 * Math.sin(angle) * (upward ? -1 : 1);
        svg.line(classes, atX - dx, atY - dy, atX + dx, atY + dy);
    }
}
