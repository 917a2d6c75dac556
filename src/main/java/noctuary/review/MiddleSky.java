package noctuary.review;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import noctuary.entry.Journal;
import noctuary.entry.Site;
import noctuary.entry.Typed;
import noctuary.measure.CourseFrame;
import noctuary.measure.EntrySheet;
import noctuary.measure.FrameSheet;
import noctuary.measure.NightCourse;

/** The sky over the frame in the middle of each night of an entry; over the stack where the frames are gone. */
public final class MiddleSky {
    private MiddleSky() {}

    /** By night, ascending; nights of which nothing is known are left out. */
    public static Map<LocalDate, FrameSky> of(Journal journal, EntrySheet sheet) {
        Optional<Site> site = sheet.entry().site().map(Typed::value).map(journal.sites()::get);
        Map<LocalDate, FrameSky> skies = new LinkedHashMap<>();
        for (NightCourse course : sheet.courses()) {
            middle(sheet, course).ifPresent(frame -> put(skies, course.night(), frame, sheet, site));
        }
        if (sheet.courses().isEmpty() && sheet.night().value().isPresent()) {
            Optional<FrameSheet> only = sheet.frames().stream()
                    .filter(FrameSheet::counted)
                    .findFirst()
                    .or(sheet::stack)
                    .filter(file -> file.measurement().readable());
            only.ifPresent(file -> put(skies, sheet.night().value().get(), file, sheet, site));
        }
        return skies;
    }

    private static Optional<FrameSheet> middle(EntrySheet sheet, NightCourse course) {
        List<Instant> taken = course.frames().stream()
                .map(CourseFrame::taken)
                .sorted(Comparator.naturalOrder())
                .toList();
        if (taken.isEmpty()) {
            return Optional.empty();
        }
        Instant middle = taken.get(taken.size() / 2);
        return sheet.frames().stream()
                .filter(FrameSheet::counted)
                .filter(frame -> frame.report().taken().filter(middle::equals).isPresent())
                .findFirst();
    }

    private static void put(
            Map<LocalDate, FrameSky> skies, LocalDate night, FrameSheet file, EntrySheet sheet, Optional<Site> site) {
        FrameSky sky = FrameSkies.of(file, sheet.target().value(), site);
        if (!sky.equals(FrameSky.UNKNOWN)) {
            skies.put(night, sky);
        }
    }
}
