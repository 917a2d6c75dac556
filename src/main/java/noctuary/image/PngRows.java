package noctuary.image;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;

/** Rows of a PNG picture, or of one pass of an interlaced one, with their filters undone (9 of the specification). */
final class PngRows {
    private final InputStream unpacked;
    private final int apart;
    private final int bits;
    private byte[] above;
    private byte[] here;
    private final int[] samples;

    /**
     * @param width pixels of a row
     * @param perPixel samples
     */
    PngRows(InputStream unpacked, int width, int perPixel, int bits) {
        int length = (int) (((long) width * perPixel * bits + 7) / 8);
        this.unpacked = unpacked;
        this.apart = Math.max(1, perPixel * bits / 8);
        this.bits = bits;
        this.above = new byte[length];
        this.here = new byte[length];
        this.samples = new int[width * perPixel];
    }

    /** The next row, overwritten by the one after. */
    int[] next() throws IOException {
        byte[] other = above;
        above = here;
        here = other;
        int filter = unpacked.read();
        if (filter < 0 || unpacked.readNBytes(here, 0, here.length) < here.length) {
            throw new EOFException();
        }
        switch (filter) {
            case 0 -> {}
            case 1 -> left();
            case 2 -> up();
            case 3 -> average();
            case 4 -> paeth();
            default -> throw new IOException("a row of it makes no sense");
        }
        unpack();
        return samples;
    }

    private void left() {
        for (int i = apart; i < here.length; i++) {
            here[i] += here[i - apart];
        }
    }

    private void up() {
        for (int i = 0; i < here.length; i++) {
            here[i] += above[i];
        }
    }

    private void average() {
        for (int i = 0; i < here.length; i++) {
            int left = i < apart ? 0 : here[i - apart] & 255;
            here[i] += (byte) (left + (above[i] & 255) >> 1);
        }
    }

    private void paeth() {
        for (int i = 0; i < Math.min(apart, here.length); i++) {
            here[i] += above[i];
        }
        for (int i = apart; i < here.length; i++) {
            int a = here[i - apart] & 255;
            int b = above[i] & 255;
            int c = above[i - apart] & 255;
            int pa = Math.abs(b - c);
            int pb = Math.abs(a - c);
            int pc = Math.abs(a + b - 2 * c);
            here[i] += (byte) (pa <= pb && pa <= pc ? a : pb <= pc ? b : c);
        }
    }

    private void unpack() {
        for (int i = 0; i < samples.length; i++) {
            if (bits == 8) {
                samples[i] = here[i] & 255;
            } else if (bits == 16) {
                samples[i] = (here[2 * i] & 255) << 8 | here[2 * i + 1] & 255;
            } else {
                int from = i * bits;
                samples[i] = here[from >> 3] >> 8 - bits - (from & 7) & (1 << bits) - 1;
            }
        }
    }
}
