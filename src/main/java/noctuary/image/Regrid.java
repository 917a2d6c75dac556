package noctuary.image;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Planes seen through a straight map, by cubic convolution (Keys 1981, IEEE Trans. Acoustics, Speech and Signal
 * Processing 29, 1153, with a = -1/2: exact for parabolas, continuous in its slope). Where the map shrinks, the kernel
 * is widened by as much, so that every pixel counts and fine noise averages out. Values per pixel are kept, not sums.
 *
 * <p>Beyond the outer edges of the plane the result is missing; so it is where a missing pixel lies under the kernel.
 * Up to the edges the outermost pixels stand for those beyond. Equal maps give exact copies.
 */
public final class Regrid {
    /** Pixels of the source that a block of the result may lie over, each way: small enough to stay in the cache. */
    private static final int REACH = 192;

    private static final int LARGEST_BLOCK = 128;
    private static final CubicKernel PLAIN = CubicKernel.of(1);

    private final Plane source;
    private final Affine toSource;
    private final int width;
    private final int height;
    private final CubicKernel kernel;
    private final float[] result;

    private Regrid(Plane source, Affine toSource, int width, int height) {
        this.source = source;
        this.toSource = toSource;
        this.width = width;
        this.height = height;
        double shrink = Math.sqrt(toSource.area());
        this.kernel = shrink < 1.02 ? PLAIN : CubicKernel.of(shrink);
        this.result = new float[width * height];
    }

    /**
     * @param toSource where a pixel of the result lies in {@code source}
     * @return {@code width} x {@code height} pixels
     */
    public static Plane onto(Plane source, Affine toSource, int width, int height) {
        Regrid regrid = new Regrid(source, toSource, width, height);
        regrid.run();
        return Plane.of(width, height, regrid.result);
    }

    private void run() {
        int side = (int) Math.max(4, Math.min(LARGEST_BLOCK, REACH / Math.sqrt(toSource.area()) / 1.5));
        int across = (width + side - 1) / side;
        int down = (height + side - 1) / side;
        IntStream.range(0, across * down).parallel().forEach(i -> block(i % across * side, i / across * side, side));
    }

    private void block(int left, int top, int side) {
        int right = Math.min(width, left + side);
        int bottom = Math.min(height, top + side);
        SourceCut cut = SourceCut.under(source, toSource, new int[] {left, top, right, bottom}, kernel.reach() + 1);
        CubicRow row = new CubicRow(cut, toSource, kernel);
        for (int y = top; y < bottom; y++) {
            int at = y * width;
            if (cut == null) {
                Arrays.fill(result, at + left, at + right, Float.NaN);
            } else {
                row.fill(left, right, y, result, at);
            }
        }
    }
}
