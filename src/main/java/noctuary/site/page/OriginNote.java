package noctuary.site.page;

import java.util.List;

/**
 * Who says so, as printed.
 *
 * @param by one word: typed, header, measured or computed
 * @param where a phrase such as {@code entries/m27/entry.md, line 7}
 * @param quote the card or the line as written; empty for other origins
 * @param formula empty unless computed
 */
public record OriginNote(String by, String where, String quote, String formula, Link method, List<Input> inputs) {
    public OriginNote {
        inputs = List.copyOf(inputs);
    }

    public record Input(String name, String value, OriginNote origin) {}
}
