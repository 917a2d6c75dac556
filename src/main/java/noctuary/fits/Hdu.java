package noctuary.fits;

import java.util.List;

/**
 * One header-data unit: its cards, what they claim, and the header's bytes; the data follows in the source.
 *
 * @param headerBytes whole blocks, as they stand in the file
 */
record Hdu(List<Card> cards, Structure structure, byte[] headerBytes, List<FrameHeader.Oddity> oddities) {
    static final String COPY_AGAIN = "copy the file again from where it was taken, or leave it out";

    /** Length of the data unit with its padding. */
    long paddedBytes() {
        long bytes = structure.dataBytes();
        long over = bytes % HduScanner.BLOCK;
        return over == 0 ? bytes : bytes + HduScanner.BLOCK - over;
    }
}
