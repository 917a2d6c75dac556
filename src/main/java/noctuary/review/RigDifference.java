package noctuary.review;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import noctuary.entry.RigNote;
import noctuary.entry.Typed;
import noctuary.fact.Printed;
import noctuary.fact.Quantity;
import noctuary.measure.RigSheet;

/** All that differs between two rigs as the keeper wrote them: a review of the whole cannot tell which of it did it. */
final class RigDifference {
    private RigDifference() {}

    static List<String> between(Change change) {
        Optional<RigNote> before = note(change.before());
        Optional<RigNote> after = note(change.after());
        if (before.isEmpty() || after.isEmpty()) {
            return List.of();
        }
        RigNote a = before.get();
        RigNote b = after.get();
        List<String> sentences = new ArrayList<>();
        sentences.addAll(values("Optics", a, b, RigNote::optics));
        sentences.addAll(values("Camera", a, b, RigNote::camera));
        sentences.addAll(
                words("Colour mosaic", a.mosaic().map(Typed::value), b.mosaic().map(Typed::value)));
        sentences.addAll(words("Mount", a.mountName(), b.mountName()));
        return sentences;
    }

    private static Optional<RigNote> note(Side side) {
        return side.nights().stream()
                .flatMap(n -> n.rigSheet().stream())
                .map(RigSheet::note)
                .findFirst();
    }

    private static List<String> values(
            String what, RigNote a, RigNote b, Function<RigNote, Map<String, Typed<Quantity>>> part) {
        Set<String> keys = new LinkedHashSet<>(part.apply(a).keySet());
        keys.addAll(part.apply(b).keySet());
        List<String> unlike = new ArrayList<>();
        for (String key : keys) {
            String before = said(part.apply(a).get(key));
            String after = said(part.apply(b).get(key));
            if (!before.equals(after)) {
                unlike.add(key + " " + before + " → " + after);
            }
        }
        return unlike.isEmpty() ? List.of() : List.of(what + ": " + String.join(", ", unlike) + ".");
    }

    private static List<String> words(String what, Optional<String> before, Optional<String> after) {
        return before.equals(after)
                ? List.of()
                : List.of(what + ": " + before.orElse("none told") + " → " + after.orElse("none told") + ".");
    }

    private static String said(Typed<Quantity> typed) {
        return typed == null ? "not told" : Printed.of(typed.value());
    }
}
