package noctuary.site;

import java.time.LocalDate;
import java.util.List;
import noctuary.measure.RigSheet;
import noctuary.review.Change;
import noctuary.review.ChangeKind;
import noctuary.review.EntryNight;
import noctuary.review.Review;
import noctuary.site.page.Link;

/** Dated changes as charts and lists mark them. */
final class ChangeMarks {
    private ChangeMarks() {}

    /**
     * @param text short, for a chart
     * @param title in full
     * @param page that tells more
     * @param verdict in words, empty where there is none
     * @param tone the class that colours it
     */
    record Mark(LocalDate date, String text, String title, Address page, String verdict, String tone) {}

    static List<Mark> of(SiteContent content) {
        return marks(content.reviews());
    }

    /** Those that brought this rig, or a part of it. */
    static List<Mark> of(SiteContent content, RigSheet rig) {
        String id = rig.note().id();
        return marks(content.reviews().stream()
                .filter(r -> r.change().kind() == ChangeKind.RIG)
                .filter(r -> r.change().after().id().equals(id)
                        || r.change().after().nights().stream()
                                .map(EntryNight::rig)
                                .anyMatch(id::equals))
                .toList());
    }

    /** A line of a note, with the way to the change that it tells of; plain where it makes none. */
    static Link line(SiteContent content, Address here, String slug, String line) {
        return content.reviews().stream()
                .filter(r -> r.change().words().contains(line)
                        || r.change().sentence().equals(line))
                .filter(r -> r.change().after().entries().contains(slug))
                .findFirst()
                .map(r -> Link.of(line, here.to(Address.change(r.change().id()))))
                .orElseGet(() -> Link.plain(line));
    }

    private static String brief(Change change) {
        boolean named = change.kind() == ChangeKind.RIG || change.kind() == ChangeKind.SITE;
        return named ? change.after().name() : ReviewText.title(change);
    }

    private static List<Mark> marks(List<Review> reviews) {
        return reviews.stream()
                .filter(r -> r.change().date().isPresent())
                .map(r -> new Mark(
                        r.change().date().get(),
                        brief(r.change()),
                        ReviewText.title(r.change()),
                        Address.change(r.change().id()),
                        ReviewText.words(r.verdict()),
                        ReviewText.tone(r.verdict())))
                .toList();
    }
}
