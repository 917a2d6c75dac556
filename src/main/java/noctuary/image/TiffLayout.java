package noctuary.image;

import java.io.IOException;
import java.nio.ByteOrder;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.imageio.stream.ImageInputStream;

/**
 * What the first directory of a TIFF file says about its samples (TIFF 6.0, section 2; tag 339 of its section 19; the
 * floating point predictor of technical note 3), and where its entries lie in the file.
 *
 * @param bits a sample
 * @param format 1 whole numbers, 3 floating point
 * @param predictor 1 none, 2 differences along the row, 3 differences of the bytes of floating point numbers
 * @param planar whether every colour is stored by itself
 * @param tileWidth 0 when stored in strips
 * @param predictorAt file offset of the predictor's value; 0 when there is none
 * @param formatAt file offset of the first sample format; 0 when there is none
 * @param samples a pixel
 */
record TiffLayout(
        boolean littleEndian,
        int bits,
        int format,
        int predictor,
        boolean planar,
        boolean whiteIsZero,
        int tileWidth,
        long predictorAt,
        long formatAt,
        int samples) {
    static final int WHOLE = 1;
    static final int FLOATING = 3;

    private static final int MOST_ENTRIES = 4096;
    private static final int MOST_SAMPLES = 16;
    private static final int SHORT = 3;

    /** Of a file at its start, where the stream is left; nothing when it is no classic TIFF file. */
    static Optional<TiffLayout> of(ImageInputStream in) throws IOException {
        ByteOrder before = in.getByteOrder();
        try {
            int mark = in.length() < 8 ? 0 : in.readUnsignedShort();
            if (mark != 0x4949 && mark != 0x4D4D) {
                return Optional.empty();
            }
            in.setByteOrder(mark == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
            return in.readUnsignedShort() == 42 ? Optional.of(directory(in, mark == 0x4949)) : Optional.empty();
        } finally {
            in.setByteOrder(before);
            in.seek(0);
        }
    }

    private static TiffLayout directory(ImageInputStream in, boolean littleEndian) throws IOException {
        in.seek(in.readUnsignedInt());
        int entries = Math.min(MOST_ENTRIES, in.readUnsignedShort());
        long first = in.getStreamPosition();
        long[] bits = {1, 0};
        long[] format = {WHOLE, 0};
        long[] predictor = {1, 0};
        long[] planar = {1, 0};
        long[] photometric = {1, 0};
        long[] tileWidth = {0, 0};
        long[] samples = {1, 0};
        for (int i = 0; i < entries; i++) {
            in.seek(first + 12L * i);
            switch (in.readUnsignedShort()) {
                case 258 -> read(in, bits);
                case 262 -> read(in, photometric);
                case 277 -> read(in, samples);
                case 284 -> read(in, planar);
                case 317 -> read(in, predictor);
                case 322 -> read(in, tileWidth);
                case 339 -> read(in, format);
                default -> {}
            }
        }
        return new TiffLayout(
                littleEndian,
                (int) bits[0],
                (int) format[0],
                (int) predictor[0],
                planar[0] == 2,
                photometric[0] == 0,
                (int) tileWidth[0],
                predictor[1],
                format[1],
                (int) samples[0]);
    }

    /** The first value of the entry whose tag was just read, and where it lies. */
    private static void read(ImageInputStream in, long[] valueAndPlace) throws IOException {
        boolean isShort = in.readUnsignedShort() == SHORT;
        long count = in.readUnsignedInt();
        long place = in.getStreamPosition();
        if (count * (isShort ? 2 : 4) > 4) {
            place = in.readUnsignedInt();
            in.seek(place);
        }
        valueAndPlace[0] = isShort ? in.readUnsignedShort() : in.readUnsignedInt();
        valueAndPlace[1] = place;
    }

    /** Whether the rows must be undone here: ImageIO undoes differences of bytes only. */
    boolean foretold() {
        return predictor == 2 && bits > 8 || predictor == 3;
    }

    /** Bytes to change so that foretold samples read as plain whole numbers: ImageIO hands them out as stored then. */
    Map<Long, Byte> plain() {
        Map<Long, Byte> changes = new TreeMap<>();
        if (foretold()) {
            one(predictorAt, changes);
            for (int i = 0; format == FLOATING && i < Math.min(samples, MOST_SAMPLES); i++) {
                one(formatAt + 2L * i, changes);
            }
        }
        return changes;
    }

    /** Makes the short at {@code place} 1. */
    private void one(long place, Map<Long, Byte> changes) {
        changes.put(place, (byte) (littleEndian ? 1 : 0));
        changes.put(place + 1, (byte) (littleEndian ? 0 : 1));
    }

    boolean halfFloats() {
        return format == FLOATING && bits == 16;
    }
}
