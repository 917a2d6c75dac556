package noctuary.fits;

import java.nio.ByteBuffer;
import java.util.Optional;

/**
 * The ones'-complement check sum of FITS 4.0 section 4.4.2.7 and appendix J.
 *
 * <p>Words are summed as they come; pieces must be a multiple of four bytes long, except the last.
 */
final class FitsChecksum {
    private static final long MASK = 0xFFFFFFFFL;
    private static final String HINT = "the file may be damaged, or edited without renewing the sum";

    private long sum;

    /** Adds the piece from its position to its limit, as if zeros followed; its position stays. */
    void accept(ByteBuffer piece) {
        ByteBuffer bytes = piece.duplicate();
        int words = bytes.remaining() / Integer.BYTES;
        int[] block = new int[Math.min(words, 1 << 14)];
        for (int done = 0; done < words; done += block.length) {
            int count = Math.min(block.length, words - done);
            bytes.asIntBuffer().get(block, 0, count);
            bytes.position(bytes.position() + count * Integer.BYTES);
            sum = fold(sum + plainSum(block, count));
        }
        long last = 0;
        for (int shift = 24; bytes.hasRemaining(); shift -= 8) {
            last |= (bytes.get() & 0xffL) << shift;
        }
        sum = fold(sum + last);
    }

    private static long plainSum(int[] words, int count) {
        long total = 0;
        for (int i = 0; i < count; i++) {
            total += words[i] & MASK;
        }
        return total;
    }

    private static long fold(long value) {
        long folded = value;
        while (folded > MASK) {
            folded = (folded & MASK) + (folded >>> 32);
        }
        return folded;
    }

    /** The sum so far, 0 to 2^32 - 1. */
    long value() {
        return sum;
    }

    /** The 16 characters of a CHECKSUM card that make a unit of this sum, with the card still all zeros, sum to -0. */
    static String encode(long sum) {
        long complement = ~sum & MASK;
        char[] coded = new char[16];
        for (int i = 0; i < 4; i++) {
            int[] characters = spread((int) (complement >>> (24 - 8 * i) & 0xff));
            for (int j = 0; j < 4; j++) {
                coded[(4 * j + i + 1) % 16] = (char) characters[j];
            }
        }
        return new String(coded);
    }

    /** Four printable characters whose offsets from '0' add up to the byte. */
    private static int[] spread(int value) {
        int quarter = value / 4 + '0';
        int[] four = {quarter + value % 4, quarter, quarter, quarter};
        while (isPunctuation(four[0]) || isPunctuation(four[1]) || isPunctuation(four[2]) || isPunctuation(four[3])) {
            for (int pair = 0; pair < 4; pair += 2) {
                if (isPunctuation(four[pair]) || isPunctuation(four[pair + 1])) {
                    four[pair]++;
                    four[pair + 1]--;
                }
            }
        }
        return four;
    }

    private static boolean isPunctuation(int character) {
        return character >= 0x3a && character <= 0x40 || character >= 0x5b && character <= 0x60;
    }

    /** True where the header carries a sum that can be checked. */
    static boolean isAskedFor(CardIndex cards) {
        return declared(cards).isPresent() || wholeUnitOnly(cards);
    }

    private static boolean wholeUnitOnly(CardIndex cards) {
        return cards.raw("CHECKSUM")
                .filter(card -> card.value().strip().length() == 16)
                .isPresent();
    }

    private static Optional<Long> declared(CardIndex cards) {
        return cards.raw("DATASUM")
                .map(card -> Numerals.parse(card.value()))
                .filter(Double::isFinite)
                .map(Double::longValue);
    }

    /**
     * Says so where the data is not what was written. A header edited later breaks CHECKSUM alone, which is no fault of
     * the pixels, so CHECKSUM counts only where there is no DATASUM.
     */
    void judge(CardIndex cards, byte[] headerBytes) {
        Optional<Long> declared = declared(cards);
        if (declared.isPresent()) {
            if (declared.get() != sum) {
                cards.odd("DATASUM", "DATASUM does not match: the pixels are not those that were written", HINT);
            }
            return;
        }
        accept(ByteBuffer.wrap(headerBytes));
        if (sum != MASK && sum != 0) {
            cards.odd("CHECKSUM", "CHECKSUM does not match: header or pixels changed after it was written", HINT);
        }
    }
}
