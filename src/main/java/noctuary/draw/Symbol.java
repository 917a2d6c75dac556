package noctuary.draw;

/** Shapes of points that stay apart without colour. Areas are about equal at one radius. */
enum Symbol {
    DOT,
    SQUARE,
    TRIANGLE,
    DIAMOND,
    SALTIRE;

    void draw(Svg svg, String classes, double x, double y, double r) {
        switch (this) {
            case DOT -> svg.circle(classes, x, y, r);
            case SQUARE -> svg.rect(classes, x - 0.9 * r, y - 0.9 * r, 1.8 * r, 1.8 * r);
            case TRIANGLE -> svg.path(classes, triangle(x, y, r));
            case DIAMOND -> svg.path(classes, diamond(x, y, r));
            case SALTIRE -> svg.path(classes, saltire(x, y, r));
        }
    }

    private static Trace triangle(double x, double y, double r) {
        return new Trace()
                .move(x, y - 1.25 * r)
                .line(x + 1.15 * r, y + 0.85 * r)
                .line(x - 1.15 * r, y + 0.85 * r)
                .shut();
    }

    private static Trace diamond(double x, double y, double r) {
        double d = 1.3 * r;
        return new Trace()
                .move(x, y - d)
                .line(x + d, y)
                .line(x, y + d)
                .line(x - d, y)
                .shut();
    }

    private static Trace saltire(double x, double y, double r) {
        return new Trace()
                .move(x - r, y - r)
                .line(x + r, y + r)
                .move(x - r, y + r)
                .line(x + r, y - r);
    }
}
