package noctuary.site.page;

import java.util.List;

/**
 * Who says so, as printed.
 *
 * @param by one word: typed, header, measured or computed
 * @param where a phrase such as {@code entries/m27/entry.md, line 7}
 * @param quote the card or the line as written; empty for other origins
 * @param formula empty unless computed
 * @param series of many inputs that came the same way, in place of {@code inputs}; null otherwise
 */
public record OriginNote(
        String by, String where, String quote, String formula, Link method, List<Input> inputs, Series series) {
    public OriginNote {
        inputs = List.copyOf(inputs);
    }

    /**
     * One number of each file.
     *
     * @param how all of them were come by, a phrase
     * @param method of them, without address where there is none
     * @param values as printed, after the file's name where that may be told
     */
    public record Series(String how, Link method, List<String> values) {
        public Series {
            values = List.copyOf(values);
        }
    }

    public record Input(String name, String value, OriginNote origin) {}
}
