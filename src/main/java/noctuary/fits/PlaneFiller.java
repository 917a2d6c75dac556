package noctuary.fits;

import java.lang.reflect.Array;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import noctuary.image.Plane;

/** Fills planes from the stored array, given piece by piece in the order of the file. */
final class PlaneFiller {
    private final Shape shape;
    private final Scaling scaling;
    private final Stored stored;
    private final List<Object> arrays = new ArrayList<>();
    private Object mixed;
    private long done;

    PlaneFiller(Shape shape, Scaling scaling, int bitpix) {
        this.shape = shape;
        this.scaling = scaling;
        this.stored = Stored.of(bitpix, scaling);
        for (int i = 0; i < shape.planes(); i++) {
            arrays.add(stored.array(shape.planePixels()));
        }
    }

    /** Takes whole values from the piece until it is empty or all planes are full. */
    void accept(ByteBuffer piece) {
        if (shape.interleaved()) {
            acceptMixed(piece);
            return;
        }
        while (piece.remaining() >= stored.bytes() && done < shape.values()) {
            int plane = (int) (done / shape.planePixels());
            int from = (int) (done % shape.planePixels());
            int count = Math.min(piece.remaining() / stored.bytes(), shape.planePixels() - from);
            stored.decode(piece, arrays.get(plane), from, count);
            done += count;
        }
    }

    private void acceptMixed(ByteBuffer piece) {
        int count = (int) Math.min(piece.remaining() / stored.bytes(), shape.values() - done);
        mixed = mixed == null || Array.getLength(mixed) < count ? stored.array(count) : mixed;
        stored.decode(piece, mixed, 0, count);
        for (int i = 0; i < count; i++) {
            long index = done + i;
            Object plane = arrays.get((int) (index % shape.planes()));
            System.arraycopy(mixed, i, plane, (int) (index / shape.planes()), 1);
        }
        done += count;
    }

    boolean isFull() {
        return done == shape.values();
    }

    List<Plane> planes() {
        List<Plane> planes = new ArrayList<>();
        for (Object array : arrays) {
            planes.add(plane(array));
        }
        return planes;
    }

    private Plane plane(Object array) {
        if (array instanceof float[] floats) {
            return Plane.of(shape.width(), shape.height(), floats);
        }
        short[] shorts = (short[]) array;
        if (scaling.blank().isPresent() && has(shorts, scaling.blank().get())) {
            return Plane.of(shape.width(), shape.height(), withoutBlank(shorts));
        }
        return Plane.ofStored(shape.width(), shape.height(), shorts, (float) scaling.zero(), (float) scaling.scale());
    }

    private static boolean has(short[] shorts, long blank) {
        for (short value : shorts) {
            if (value == blank) {
                return true;
            }
        }
        return false;
    }

    private float[] withoutBlank(short[] shorts) {
        float[] floats = new float[shorts.length];
        for (int i = 0; i < shorts.length; i++) {
            floats[i] = scaling.physical((long) shorts[i]);
        }
        return floats;
    }
}
