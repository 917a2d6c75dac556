package noctuary.entry;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import noctuary.entry.Entry.Step;
import noctuary.entry.Entry.Version;

/** The processed versions of an entry: every one grown from the stack by way of others that exist. */
final class VersionReader {
    private static final String STACK = "stack";
    private static final String KEY = "versions";

    private final Margin margin;
    private final Map<String, Version> versions = new LinkedHashMap<>();
    private final Map<String, Typed<String>> origins = new LinkedHashMap<>();

    private VersionReader(Margin margin) {
        this.margin = margin;
    }

    /** @param image finds the file of a typed path */
    static List<Version> read(Fields entry, Function<Typed<String>, Optional<Path>> image) {
        var reader = new VersionReader(entry.margin());
        entry.groups(KEY, "\"- {name: gentle, image: gentle.tif, from: stack}\"")
                .forEach(fields -> reader.add(fields, image));
        return reader.rooted();
    }

    private void add(Fields fields, Function<Typed<String>, Optional<Path>> image) {
        var name = fields.needed("name", Forms::text, "\"name: gentle\"");
        var picture = fields.one("image", Forms::text).flatMap(image);
        var from = fields.one("from", Forms::text);
        List<Step> steps = steps(fields);
        fields.refuseOthers();
        if (name.isEmpty()) {
            return;
        }
        String id = name.get().value();
        if (id.equals(STACK) || versions.containsKey(id)) {
            margin.fault(
                    name.get().line(),
                    "name",
                    id.equals(STACK)
                            ? "a version cannot be called stack"
                            : "two versions are called " + Margin.quoted(id),
                    "choose another name");
            return;
        }
        versions.put(id, new Version(id, picture, from.map(Typed::value).orElse(STACK), steps));
        from.ifPresent(typed -> origins.put(id, typed));
    }

    private static List<Step> steps(Fields fields) {
        List<Step> steps = new ArrayList<>();
        for (Node item : fields.items("steps")) {
            if (item instanceof Node.Mapping mapping) {
                mapping.pairs().forEach(pair -> step(pair, fields).ifPresent(steps::add));
            } else {
                fields.typed(item, "steps", Forms::text).ifPresent(text -> steps.add(new Step(text.value(), "")));
            }
        }
        return steps;
    }

    private static Optional<Step> step(Node.Pair pair, Fields fields) {
        if (pair.key().isBlank()) {
            fields.margin()
                    .fault(pair.line(), "steps", "a step without a name", "write steps such as stretch: asinh 12");
            return Optional.empty();
        }
        if (pair.value() instanceof Node.Scalar scalar && scalar.blank()) {
            return Optional.of(new Step(pair.key(), ""));
        }
        return fields.typed(pair.value(), pair.key(), Forms::text).map(text -> new Step(pair.key(), text.value()));
    }

    /** Versions whose origin is wrong count as made from the stack, so that nothing else is lost. */
    private List<Version> rooted() {
        for (Version version : List.copyOf(versions.values())) {
            if (!version.from().equals(STACK) && !versions.containsKey(version.from())) {
                Set<String> known = new LinkedHashSet<>(List.of(STACK));
                known.addAll(versions.keySet());
                known.remove(version.name());
                reroot(
                        version,
                        "there is no version " + Margin.quoted(version.from()),
                        Nearest.hint(version.from(), known));
            } else if (circles(version)) {
                reroot(version, "the versions grow from each other in a circle", "let one of them grow from stack");
            }
        }
        return List.copyOf(versions.values());
    }

    private boolean circles(Version version) {
        Set<String> passed = new HashSet<>();
        String at = version.name();
        while (!at.equals(STACK) && versions.containsKey(at)) {
            if (!passed.add(at)) {
                return true;
            }
            at = versions.get(at).from();
        }
        return false;
    }

    private void reroot(Version version, String what, String hint) {
        margin.fault(origins.get(version.name()).line(), "from", what, hint);
        versions.put(version.name(), new Version(version.name(), version.image(), STACK, version.steps()));
    }
}
