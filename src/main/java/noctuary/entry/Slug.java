package noctuary.entry;

import java.text.Normalizer;

/** Names that are safe in addresses and file names on every system: letters, digits, dot, dash and underscore. */
final class Slug {
    private Slug() {}

    static String of(String name) {
        String plain = Normalizer.normalize(name.replace("ß", "ss"), Normalizer.Form.NFD)
                .replaceAll("\\p{M}+", "")
                .replaceAll("[^A-Za-z0-9._-]+", "-")
                .replaceAll("^[-.]+|[-.]+$", "");
        return plain.isEmpty() ? "entry" : plain;
    }
}
