package noctuary.image;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The planes of a picture in the making, in the narrowest store that keeps its samples exactly. Rows come as their file
 * stores them and are put where they stand in the upright picture. Several threads may put different pixels.
 */
final class PictureStore {
    /** Share of Java's memory that one picture may take. */
    private static final double SHARE = 0.9;

    /**
     * Share from which on what is no longer wanted goes first: large arrays are never moved, so that one laid behind those
     * of the picture before would leave no gap for the next.
     */
    private static final double LARGE = 0.25;

    private static final int UNSIGNED = 32768;

    private final Upright upright;
    private final int bits;
    private final byte[][] bytes;
    private final short[][] shorts;
    private final float[][] floats;

    private PictureStore(Upright upright, int planes, int bits) {
        int pixels = upright.width() * upright.height();
        this.upright = upright;
        this.bits = bits;
        this.bytes = bits == 8 ? new byte[planes][pixels] : null;
        this.shorts = bits == 16 ? new short[planes][pixels] : null;
        this.floats = bits == 32 ? new float[planes][pixels] : null;
    }

    /** @param bits 8, 16 or 32: then samples come as the bits of floating point numbers */
    static PictureStore of(Upright upright, int planes, int bits) throws UnreadablePictureException {
        long wanted = (long) upright.width() * upright.height() * planes * bits / Byte.SIZE;
        requireRoom(wanted);
        if (wanted > LARGE * Runtime.getRuntime().maxMemory()) {
            System.gc();
        }
        return new PictureStore(upright, planes, bits);
    }

    /** Says before anything is allocated that there is too little memory for so many bytes. */
    static void requireRoom(long wanted) throws UnreadablePictureException {
        long most = Runtime.getRuntime().maxMemory();
        if (wanted > SHARE * most) {
            throw new UnreadablePictureException(
                    "the picture takes " + megabytes(wanted) + " MB of memory, and Java has " + megabytes(most),
                    "give Java more memory (-Xmx), or save a smaller picture");
        }
    }

    private static long megabytes(long bytes) {
        return Math.round(bytes / 1e6);
    }

    /**
     * Stores the samples of one plane.
     *
     * @param from index of the first in {@code samples}, the next every {@code apart}
     */
    void put(Run run, int plane, int[] samples, int from, int apart) {
        int at = upright.index(run.x(), run.y());
        int step = run.step() * upright.alongRow();
        if (bits == 8) {
            put(bytes[plane], at, step, run.count(), samples, from, apart);
        } else if (bits == 16) {
            put(shorts[plane], at, step, run.count(), samples, from, apart);
        } else {
            put(floats[plane], at, step, run.count(), samples, from, apart);
        }
    }

    private static void put(byte[] into, int at, int step, int count, int[] samples, int from, int apart) {
        for (int n = 0, i = at, s = from; n < count; n++, i += step, s += apart) {
            into[i] = (byte) samples[s];
        }
    }

    private static void put(short[] into, int at, int step, int count, int[] samples, int from, int apart) {
        for (int n = 0, i = at, s = from; n < count; n++, i += step, s += apart) {
            into[i] = (short) (samples[s] - UNSIGNED);
        }
    }

    private static void put(float[] into, int at, int step, int count, int[] samples, int from, int apart) {
        for (int n = 0, i = at, s = from; n < count; n++, i += step, s += apart) {
            into[i] = Float.intBitsToFloat(samples[s]);
        }
    }

    /**
     * The planes, which this hands over.
     *
     * @param white of whole numbers kept as floating point; else empty
     * @param conversion what was done to the stored colours, if anything
     */
    PictureImage toPicture(boolean alpha, Optional<Float> white, Optional<String> conversion) {
        List<Plane> planes = new ArrayList<>();
        int count = bits == 8 ? bytes.length : bits == 16 ? shorts.length : floats.length;
        for (int p = 0; p < count; p++) {
            planes.add(plane(p));
        }
        float full = bits == 8 ? 255 : bits == 16 ? 65535 : white.orElseGet(this::whiteOfFloats);
        return new PictureImage(upright.width(), upright.height(), planes, bits, full, alpha, conversion);
    }

    private Plane plane(int p) {
        return switch (bits) {
            case 8 -> Plane.ofBytes(upright.width(), upright.height(), bytes[p]);
            case 16 -> Plane.ofStored(upright.width(), upright.height(), shorts[p], UNSIGNED, 1);
            default -> Plane.of(upright.width(), upright.height(), floats[p]);
        };
    }

    private float whiteOfFloats() {
        float largest = 0;
        for (float[] plane : floats) {
            for (float value : plane) {
                largest = value > largest && value < Float.POSITIVE_INFINITY ? value : largest;
            }
        }
        return largest <= 1 ? 1 : largest <= 65535 ? 65535 : largest;
    }
}
