package noctuary.entry;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Lessons that entries say they close, checked once all lessons are known. */
final class Closing {
    private final Set<String> lessons = new TreeSet<>();

    void open(List<Entry.Lesson> opened) {
        opened.forEach(lesson -> lessons.add(lesson.id()));
    }

    /** The ids that exist; the others are faults. */
    List<String> closed(List<Typed<String>> typed, Margin margin) {
        Set<String> closed = new LinkedHashSet<>();
        for (Typed<String> claim : typed) {
            String id = id(claim.value());
            if (lessons.contains(id)) {
                closed.add(id);
            } else {
                refuse(claim, id, margin);
            }
        }
        return List.copyOf(closed);
    }

    private void refuse(Typed<String> claim, String id, Margin margin) {
        String slug = id.substring(0, Math.max(0, id.indexOf('#')));
        List<String> beside =
                lessons.stream().filter(lesson -> lesson.startsWith(slug + "#")).toList();
        String hint = Nearest.to(id, lessons)
                .map(lesson -> "did you mean " + Margin.quoted(lesson) + "?")
                .orElse(
                        beside.isEmpty()
                                ? "write the entry's name, #, and what the lesson is about"
                                : "that entry has: " + String.join(", ", beside));
        margin.fault(claim.line(), "closes", "there is no lesson " + Margin.quoted(claim.value()), hint);
    }

    private static String id(String typed) {
        int hash = typed.indexOf('#');
        return hash < 0
                ? typed
                : typed.substring(0, hash).strip() + "#" + LessonReader.anchor(typed.substring(hash + 1));
    }
}
