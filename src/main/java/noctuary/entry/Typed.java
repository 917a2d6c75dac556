package noctuary.entry;

import noctuary.fact.Origin;

/** A value the keeper typed and the place where: file as in {@link noctuary.fact.Problem}, line from 1. */
public record Typed<T>(T value, String file, int line, String key, String text) {
    public Origin.Typed origin() {
        return new Origin.Typed(file, line, key, text);
    }
}
