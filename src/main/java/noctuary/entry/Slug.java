package noctuary.entry;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Set;

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

    /** The name, or the name with a number behind it, that differs from those taken by more than case. */
    static String unique(String name, Set<String> takenInLowerCase) {
        String free = name;
        for (int n = 2; !takenInLowerCase.add(free.toLowerCase(Locale.ROOT)); n++) {
            free = numbered(name, n);
        }
        return free;
    }

    private static String numbered(String name, int n) {
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) + "-" + n + name.substring(dot) : name + "-" + n;
    }
}
