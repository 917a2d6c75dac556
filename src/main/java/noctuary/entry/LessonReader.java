package noctuary.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import noctuary.entry.Entry.Lesson;

/** Lessons that an entry opens, and the names by which others close them. */
final class LessonReader {
    private LessonReader() {}

    static List<Lesson> read(Fields entry, String slug) {
        List<Lesson> lessons = new ArrayList<>();
        var names = new UniqueNames();
        for (Fields fields : entry.groups("lessons", "\"- {about: focus, do: refocus after every 3 degrees}\"")) {
            var about = fields.needed("about", Forms::text, "\"about: focus\"");
            var todo = fields.needed("do", Forms::text, "\"do: refocus after every 3 degrees\"");
            fields.refuseOthers();
            if (about.isPresent() && todo.isPresent()) {
                String name = names.next(anchor(about.get().value()));
                lessons.add(new Lesson(
                        slug + "#" + name, about.get().value(), todo.get().value()));
            }
        }
        return lessons;
    }

    /** As a keeper types it behind the #: spaces and case do not matter. */
    static String anchor(String about) {
        String words = about.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", "-");
        return words.isEmpty() ? "lesson" : words;
    }
}
