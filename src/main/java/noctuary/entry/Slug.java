package noctuary.entry;

import java.text.Normalizer;
import java.util.Locale;

/** Names that are safe in addresses and file names on every system: letters, digits, dot, dash and underscore. */
public final class Slug {
    private Slug() {}

    static String of(String name) {
        String plain = bare(name).replaceAll("[^A-Za-z0-9._-]+", "-").replaceAll("^[-.]+|[-.]+$", "");
        return plain.isEmpty() ? "entry" : plain;
    }

    /** Lower-case letters and digits, single hyphens for all else; empty when the name has neither. */
    public static String lowerCase(String name) {
        return bare(name).toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    }

    private static String bare(String name) {
        return Normalizer.normalize(name.replace("ß", "ss"), Normalizer.Form.NFD)
                .replaceAll("\\p{M}+", "");
    }
}
