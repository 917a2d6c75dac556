package noctuary.entry;

import java.text.Normalizer;
import java.util.Locale;

/** Names that are safe in addresses and file names on every system: letters, digits, dot, dash and underscore. */
public final class Slug {
    /** A file system takes 255 bytes, and addresses put something before and behind. */
    private static final int LONGEST = 120;

    private static final int TAIL = 20;

    private Slug() {}

    static String of(String name) {
        String plain = bare(name).replaceAll("[^A-Za-z0-9._-]+", "-").replaceAll("^[-.]+|[-.]+$", "");
        return plain.isEmpty() ? "entry" : shortened(plain);
    }

    /** Lower-case letters and digits, single hyphens for all else; empty when the name has neither. */
    public static String lowerCase(String name) {
        return shortened(bare(name)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", ""));
    }

    /** Its beginning and its end, which may be a file's. */
    private static String shortened(String plain) {
        return plain.length() <= LONGEST
                ? plain
                : plain.substring(0, LONGEST - TAIL) + plain.substring(plain.length() - TAIL);
    }

    private static String bare(String name) {
        return Normalizer.normalize(name.replace("ß", "ss"), Normalizer.Form.NFD)
                .replaceAll("\\p{M}+", "");
    }
}
