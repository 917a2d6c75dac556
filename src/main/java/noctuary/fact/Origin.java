package noctuary.fact;

import java.util.List;

/** Who says so. */
public sealed interface Origin {
    /** Written by the keeper: {@code text} stands in {@code file} at {@code line} (from 1) under {@code key}. */
    record Typed(String file, int line, String key, String text) implements Origin {}

    /** Read from a header card, such as card {@code EXPTIME} with {@code text} {@code 300.0}. */
    record Header(String file, String card, String text) implements Origin {}

    /** Measured on the pixels of {@code file}; {@code method} is the id of its section on the method page. */
    record Measured(String file, String method) implements Origin {}

    /**
     * Computed by {@code formula}, written for a reader, from {@code inputs}; {@code method} as in {@link Measured}.
     */
    record Derived(String formula, String method, List<Input> inputs) implements Origin {
        public Derived {
            inputs = List.copyOf(inputs);
        }
    }

    /** One input of a formula: its name, its value as printed (with unit), and its own origin. */
    record Input(String name, String value, Origin origin) {}
}
