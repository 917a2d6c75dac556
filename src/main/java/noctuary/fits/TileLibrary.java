package noctuary.fits;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Pattern;
import nom.tam.fits.Fits;
import nom.tam.image.compression.hdu.CompressedImageHDU;

/** Hands a tile-compressed image (FITS 4.0 section 10) to the FITS library, under a header of our own writing. */
final class TileLibrary {
    private static final Logger CHATTER = Logger.getLogger("nom.tam");
    private static final Pattern NEEDED = Pattern.compile("BITPIX|NAXIS[12]?|PCOUNT|GCOUNT|TFIELDS|THEAP"
            + "|T(TYPE|FORM|NULL|SCAL|ZERO|DIM)\\d+"
            + "|ZIMAGE|ZCMPTYPE|ZBITPIX|ZNAXIS\\d*|ZTILE\\d+|ZNAME\\d+|ZVAL\\d+|ZQUANTIZ|ZDITHER0|ZSCALE|ZZERO");

    static {
        CHATTER.setLevel(Level.OFF);
    }

    private TileLibrary() {}

    /**
     * The decompressed array, nested as the axes are, last axis outermost.
     *
     * @param data the unit's data, table and heap
     */
    static Object decompress(List<Card> cards, InputStream data) throws IOException, UnreadableException {
        if (!TileClaims.sound(new CardIndex(cards))) {
            throw damaged();
        }
        try (Fits fits = new Fits(checked(cards, data))) {
            fits.readHDU();
            if (fits.readHDU() instanceof CompressedImageHDU compressed) {
                Object array = compressed.asImageHDU().getKernel();
                TileRepair.of(cards, compressed).apply(array);
                return array;
            }
        } catch (IOException | RuntimeException | StackOverflowError | LinkageError e) {
            throw damaged();
        }
        throw damaged();
    }

    /** Header, rows and heap as one stream, once the rows point nowhere outside the heap. */
    private static InputStream checked(List<Card> cards, InputStream data) throws IOException, UnreadableException {
        CardIndex index = new CardIndex(cards);
        int rowBytes = length(index, "NAXIS1");
        byte[] rows = data.readNBytes(Math.multiplyExact(rowBytes, length(index, "NAXIS2")));
        if (!HeapPointers.fit(index, rows, rowBytes, length(index, "PCOUNT"))) {
            throw damaged();
        }
        InputStream heap = HierarchicalTiles.areIn(index) ? hierarchical(index, rows, rowBytes, data) : data;
        InputStream table = new SequenceInputStream(new ByteArrayInputStream(rows), heap);
        return new SequenceInputStream(new ByteArrayInputStream(header(cards)), table);
    }

    private static InputStream hierarchical(CardIndex index, byte[] rows, int rowBytes, InputStream data)
            throws IOException, UnreadableException {
        byte[] heap = data.readNBytes(length(index, "PCOUNT"));
        long gap = index.raw("THEAP").isPresent() ? length(index, "THEAP") - (long) rows.length : 0;
        if (!HierarchicalTiles.fit(index, HeapPointers.beginnings(index, rows, rowBytes), heap, gap)) {
            throw damaged();
        }
        return new SequenceInputStream(new ByteArrayInputStream(heap), data);
    }

    private static int length(CardIndex index, String keyword) {
        return Integer.parseInt(
                index.raw(keyword).map(card -> card.value().strip()).orElse("0"));
    }

    private static UnreadableException damaged() {
        return new UnreadableException(
                "holds a compressed image that cannot be decompressed: its tiles are damaged", Hdu.COPY_AGAIN);
    }

    /**
     * An empty primary unit and the header of the table, whole blocks. Left out are ZBLANK, which the library 1.21
     * takes for 0, and ZQUANTIZ where nothing was quantised, which it takes for quantised.
     */
    private static byte[] header(List<Card> cards) {
        boolean quantised = cards.stream().anyMatch(card -> card.value().strip().equals("ZSCALE"))
                || cards.stream().anyMatch(card -> card.keyword().equals("ZSCALE"));
        StringBuilder text = new StringBuilder();
        append(text, "SIMPLE", "T");
        append(text, "BITPIX", "8");
        append(text, "NAXIS", "0");
        append(text, "EXTEND", "T");
        end(text);
        append(text, "XTENSION", "'BINTABLE'");
        Set<String> written = new HashSet<>();
        for (Card card : cards) {
            boolean needed = NEEDED.matcher(card.keyword()).matches()
                    && (quantised || !card.keyword().equals("ZQUANTIZ"));
            if (needed && written.add(card.keyword())) {
                append(text, card.keyword(), written(card));
            }
        }
        end(text);
        return text.toString().getBytes(StandardCharsets.ISO_8859_1);
    }

    private static String written(Card card) {
        return card.quoted() ? "'" + card.value().replace("'", "''") + "'" : card.value();
    }

    private static void append(StringBuilder text, String keyword, String value) {
        String card = String.format(Locale.ROOT, "%-8s= %20s", keyword, value);
        text.append(String.format(Locale.ROOT, "%-80.80s", card));
    }

    private static void end(StringBuilder text) {
        text.append(String.format(Locale.ROOT, "%-80s", "END"));
        while (text.length() % HduScanner.BLOCK != 0) {
            text.append(' ');
        }
    }
}
