package noctuary.image;

/** A grid of values that is handed out row by row. */
interface Rows {
    int width();

    int height();

    /** Fills {@code into} with row {@code y}; NaN where missing. */
    void copyRow(int y, float[] into);

    static Rows of(Plane plane) {
        return new Rows() {
            @Override
            public int width() {
                return plane.width();
            }

            @Override
            public int height() {
                return plane.height();
            }

            @Override
            public void copyRow(int y, float[] into) {
                plane.copyRow(0, y, plane.width(), into, 0);
            }
        };
    }
}
