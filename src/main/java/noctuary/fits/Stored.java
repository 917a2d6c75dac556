package noctuary.fits;

import java.nio.ByteBuffer;

/** Decodes big-endian stored values: 8 and 16 bit into shorts, to be scaled later; the others into physical floats. */
abstract class Stored {
    private final int bytes;

    Stored(int bytes) {
        this.bytes = bytes;
    }

    /** Bytes of one value. */
    int bytes() {
        return bytes;
    }

    /** A {@code short[]} or a {@code float[]}. */
    Object array(int length) {
        return new float[length];
    }

    /** Moves {@code count} values from the buffer's position into the array. */
    abstract void decode(ByteBuffer from, Object into, int offset, int count);

    static Stored of(int bitpix, Scaling scaling) {
        return switch (bitpix) {
            case 8 -> new Bytes();
            case 16 -> new Shorts();
            case 32 -> new Ints(scaling);
            case 64 -> new Longs(scaling);
            case -32 -> new Floats(scaling);
            case -64 -> new Doubles(scaling);
            default -> throw new IllegalArgumentException("BITPIX " + bitpix);
        };
    }

    private static void pass(ByteBuffer buffer, int bytes) {
        buffer.position(buffer.position() + bytes);
    }

    private static final class Bytes extends Stored {
        Bytes() {
            super(1);
        }

        @Override
        Object array(int length) {
            return new short[length];
        }

        @Override
        void decode(ByteBuffer from, Object into, int offset, int count) {
            short[] shorts = (short[]) into;
            for (int i = 0; i < count; i++) {
                shorts[offset + i] = (short) (from.get() & 0xff);
            }
        }
    }

    private static final class Shorts extends Stored {
        Shorts() {
            super(Short.BYTES);
        }

        @Override
        Object array(int length) {
            return new short[length];
        }

        @Override
        void decode(ByteBuffer from, Object into, int offset, int count) {
            from.asShortBuffer().get((short[]) into, offset, count);
            pass(from, count * Short.BYTES);
        }
    }

    private static final class Ints extends Stored {
        private final Scaling scaling;

        Ints(Scaling scaling) {
            super(Integer.BYTES);
            this.scaling = scaling;
        }

        @Override
        void decode(ByteBuffer from, Object into, int offset, int count) {
            float[] floats = (float[]) into;
            for (int i = 0; i < count; i++) {
                floats[offset + i] = scaling.physical((long) from.getInt());
            }
        }
    }

    private static final class Longs extends Stored {
        private final Scaling scaling;

        Longs(Scaling scaling) {
            super(Long.BYTES);
            this.scaling = scaling;
        }

        @Override
        void decode(ByteBuffer from, Object into, int offset, int count) {
            float[] floats = (float[]) into;
            for (int i = 0; i < count; i++) {
                floats[offset + i] = scaling.physical(from.getLong());
            }
        }
    }

    private static final class Floats extends Stored {
        private final Scaling scaling;

        Floats(Scaling scaling) {
            super(Float.BYTES);
            this.scaling = scaling;
        }

        @Override
        void decode(ByteBuffer from, Object into, int offset, int count) {
            float[] floats = (float[]) into;
            from.asFloatBuffer().get(floats, offset, count);
            pass(from, count * Float.BYTES);
            if (!scaling.isIdentity()) {
                for (int i = offset; i < offset + count; i++) {
                    floats[i] = scaling.physical((double) floats[i]);
                }
            }
            dropInfinities(floats, offset, count);
        }
    }

    private static final class Doubles extends Stored {
        private final Scaling scaling;

        Doubles(Scaling scaling) {
            super(Double.BYTES);
            this.scaling = scaling;
        }

        @Override
        void decode(ByteBuffer from, Object into, int offset, int count) {
            float[] floats = (float[]) into;
            for (int i = 0; i < count; i++) {
                floats[offset + i] = scaling.physical(from.getDouble());
            }
            dropInfinities(floats, offset, count);
        }
    }

    /** x - x is 0 for a finite x and NaN for an infinite one. */
    private static void dropInfinities(float[] floats, int offset, int count) {
        for (int i = offset; i < offset + count; i++) {
            floats[i] += floats[i] - floats[i];
        }
    }
}
