package noctuary.image;

/** The 2 x 2 colour filter pattern, named from the first stored pixel: (0,0) (1,0) then (0,1) (1,1). */
public enum Mosaic {
    RGGB,
    GRBG,
    GBRG,
    BGGR;

    /** The filter over pixel (x, y): 'R', 'G' or 'B'. */
    public char filterAt(int x, int y) {
        return name().charAt((y & 1) * 2 + (x & 1));
    }

    /** The pattern seen when the first {@code dx} columns and {@code dy} rows are left out. */
    public Mosaic shifted(int dx, int dy) {
        StringBuilder pattern = new StringBuilder();
        for (int y = 0; y < 2; y++) {
            for (int x = 0; x < 2; x++) {
                pattern.append(filterAt(x + dx, y + dy));
            }
        }
        return valueOf(pattern.toString());
    }
}
