package noctuary.fits;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Which cards of the primary header count for an image in an extension (FITS 4.0 section 4.4.2.6 and appendix K). */
final class Inheritance {
    /** Structure, scaling, sums and names belong to one unit; coordinates belong to one pixel grid. */
    private static final Pattern OWN = Pattern.compile("SIMPLE|XTENSION|BITPIX|NAXIS\\d*|EXTEND|PCOUNT|GCOUNT|GROUPS"
            + "|BSCALE|BZERO|BLANK|BUNIT|DATAMIN|DATAMAX|CHECKSUM|DATASUM|EXTNAME|EXTVER|EXTLEVEL|INHERIT"
            + "|WCSAXES|WCSNAME|(CTYPE|CRVAL|CRPIX|CDELT|CROTA|CUNIT)\\d|(CD|PC|PV)\\d_\\d+|PC\\d{6}|LONPOLE|LATPOLE"
            + "|[AB]P?_(ORDER|DMAX|\\d_\\d)");

    private static final Pattern TABLE = Pattern.compile("XTENSION|PCOUNT|GCOUNT|TFIELDS|THEAP|BITPIX|NAXIS\\d*"
            + "|T(TYPE|FORM|NULL|SCAL|ZERO|DIM|UNIT|DISP)\\d+"
            + "|Z(IMAGE|TENSION|CMPTYPE|QUANTIZ|DITHER0|BLANK|SCALE|ZERO|SIMPLE|EXTEND|PCOUNT|GCOUNT|HECKSUM|DATASUM)"
            + "|ZTILE\\d+|ZNAME\\d+|ZVAL\\d+");

    private Inheritance() {}

    /** The cards that count for the image: its own, then those it inherits. */
    static List<Card> merge(Hdu image, Hdu primary) {
        List<Card> merged = new ArrayList<>(image.structure().tiled() ? untiled(image.cards()) : image.cards());
        boolean refused = image.cards().stream()
                .anyMatch(
                        card -> card.keyword().equals("INHERIT") && card.value().equals("F"));
        if (image == primary || refused) {
            return merged;
        }
        Set<String> own = merged.stream().map(Card::keyword).collect(Collectors.toSet());
        primary.cards().stream()
                .filter(card -> !own.contains(card.keyword()) || isCommentary(card))
                .filter(card -> !OWN.matcher(card.keyword()).matches())
                .forEach(merged::add);
        return merged;
    }

    private static boolean isCommentary(Card card) {
        return card.keyword().equals("HISTORY") || card.keyword().equals("COMMENT");
    }

    /** The header of the image that a table of compressed tiles stands for. */
    private static List<Card> untiled(List<Card> cards) {
        List<Card> image = new ArrayList<>();
        for (Card card : cards) {
            if (card.keyword().matches("ZBITPIX|ZNAXIS\\d*")) {
                image.add(new Card(card.keyword().substring(1), card.value(), card.comment(), card.quoted()));
            } else if (!TABLE.matcher(card.keyword()).matches()) {
                image.add(card);
            }
        }
        return image;
    }
}
