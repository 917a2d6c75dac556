package noctuary.stars.sim;

/** Single stars without noise and sky. */
public final class StampMaker {
    private StampMaker() {}

    /** Pixel values, row after row, of a star of unit flux whose centre is at (x, y). */
    public static double[] moffat(int side, double x, double y, StarShape.At shape) {
        MoffatStamp stamp = new MoffatStamp(shape.fwhmPx(), shape.ellipticity(), shape.angleDeg(), shape.beta());
        double[] pixels = new double[side * side];
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = stamp.share(i % side - x, (double) (i / side) - y);
        }
        return pixels;
    }
}
