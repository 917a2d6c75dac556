package noctuary.entry;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The keys of one group, read one by one; what nobody asked for is unknown. */
final class Fields {
    private final Node.Mapping mapping;
    private final Margin margin;
    private final Set<String> known = new LinkedHashSet<>();

    Fields(Node.Mapping mapping, Margin margin) {
        this.mapping = mapping;
        this.margin = margin;
    }

    Margin margin() {
        return margin;
    }

    int line() {
        return mapping.line();
    }

    /** Whether a missing key is the keeper's doing. */
    boolean whole() {
        return mapping.whole();
    }

    boolean has(String key) {
        return pair(key).isPresent();
    }

    <T> Optional<Typed<T>> one(String key, Form<T> form) {
        return pair(key).flatMap(pair -> typed(pair.value(), key, form));
    }

    /** As {@link #one}, with a fault when the key is not there. */
    <T> Optional<Typed<T>> needed(String key, Form<T> form, String example) {
        if (!has(key) && mapping.whole()) {
            margin.fault(mapping.line(), key, "this key is needed and is not there", "write " + example);
        }
        return one(key, form);
    }

    /** The values of a list; a single value counts as a list of one. */
    <T> List<Typed<T>> list(String key, Form<T> form) {
        List<Typed<T>> values = new ArrayList<>();
        for (Node item : items(key)) {
            typed(item, key, form).ifPresent(values::add);
        }
        return values;
    }

    /** The nodes of a list; a single value counts as a list of one, a blank one as none. */
    List<Node> items(String key) {
        Node value = pair(key).map(Node.Pair::value).orElse(null);
        if (value == null || value instanceof Node.Scalar scalar && scalar.blank()) {
            return List.of();
        }
        return value instanceof Node.Sequence sequence ? sequence.items() : List.of(value);
    }

    /** The groups of keys in a list, such as {@code [{count: 4, seconds: 60}]}. */
    List<Fields> groups(String key, String example) {
        List<Fields> groups = new ArrayList<>();
        for (Node item : items(key)) {
            if (item instanceof Node.Mapping group) {
                groups.add(new Fields(group, margin));
            } else {
                margin.fault(item.line(), key, "a group of keys is expected here", "write " + example);
            }
        }
        return groups;
    }

    /** A group of keys; empty, and never a problem later, when it is not there. */
    Fields group(String key, String example) {
        Node value = pair(key).map(Node.Pair::value).orElse(null);
        if (value instanceof Node.Mapping group) {
            return new Fields(group, margin);
        }
        if (value != null && !(value instanceof Node.Scalar scalar && scalar.blank())) {
            margin.fault(value.line(), key, "a group of keys is expected here", "write " + example);
        }
        return new Fields(new Node.Mapping(List.of(), mapping.line(), false), margin);
    }

    /** All keys as they stand, for groups whose keys are names. */
    List<Node.Pair> pairs() {
        mapping.pairs().forEach(pair -> known.add(pair.key()));
        return mapping.pairs();
    }

    <T> Optional<Typed<T>> typed(Node value, String key, Form<T> form) {
        if (!(value instanceof Node.Scalar scalar)) {
            margin.fault(value.line(), key, "one value is expected here, not a list or group", "write it in one line");
            return Optional.empty();
        }
        if (scalar.text().isEmpty() || scalar.blank()) {
            margin.fault(scalar.line(), key, "this key has no value", "give it one, or delete the line");
            return Optional.empty();
        }
        try {
            T read = form.of(scalar.text());
            return Optional.of(new Typed<>(read, margin.file(), scalar.line(), key, scalar.text()));
        } catch (Unfit e) {
            margin.fault(scalar.line(), key, e);
            return Optional.empty();
        }
    }

    /** Reports every key that was never asked for. */
    void refuseOthers() {
        for (Node.Pair pair : mapping.pairs()) {
            if (!known.contains(pair.key())) {
                margin.fault(pair.line(), pair.key(), "unknown key " + Margin.quoted(pair.key()), hintFor(pair));
            }
        }
    }

    private String hintFor(Node.Pair pair) {
        boolean split = pair.value() instanceof Node.Scalar scalar
                && scalar.blank()
                && pair.key().matches("\\d+(\\s.*)?");
        return split
                ? "inside { } a comma begins a new key: write decimals with a point"
                : Nearest.hint(pair.key(), known);
    }

    private Optional<Node.Pair> pair(String key) {
        known.add(key);
        return mapping.pairs().stream().filter(pair -> pair.key().equals(key)).findFirst();
    }
}
