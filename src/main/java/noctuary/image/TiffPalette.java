package noctuary.image;

import java.io.EOFException;
import java.io.IOException;
import java.util.Arrays;

/** The colour table of a TIFF file (TIFF 6.0, section 5) in eight bits. */
final class TiffPalette {
    private TiffPalette() {}

    /**
     * One list when all are grey, else those of red, green and blue. Values of 16 bits; where none is above 255, a writer
     * meant eight.
     */
    static int[][] of(TiffDirectory tags, int bits) throws IOException {
        int size = 1 << bits;
        long[] stored = tags.numbers(320, 3 * size);
        if (stored.length < 3 * size) {
            throw new EOFException();
        }
        int shift = Arrays.stream(stored).allMatch(v -> v < 256) ? 0 : 8;
        int[][] lists = new int[3][size];
        for (int i = 0; i < stored.length; i++) {
            lists[i / size][i % size] = (int) stored[i] >> shift & 255;
        }
        boolean grey = Arrays.equals(lists[0], lists[1]) && Arrays.equals(lists[0], lists[2]);
        return grey ? new int[][] {lists[0]} : lists;
    }
}
