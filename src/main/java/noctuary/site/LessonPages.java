package noctuary.site;

import java.util.List;
import java.util.Optional;
import noctuary.advice.LessonState;
import noctuary.measure.EntrySheet;
import noctuary.site.page.LessonsPage;
import noctuary.site.page.Link;

/** The lessons, open and closed. */
final class LessonPages {
    private static final Address HERE = Address.LESSONS;

    private final Ledger ledger;
    private final Heads heads;

    LessonPages(Ledger ledger, Heads heads) {
        this.ledger = ledger;
        this.heads = heads;
    }

    LessonsPage page() {
        List<LessonState> lessons = ledger.advice().lessons();
        return new LessonsPage(
                heads.of(HERE, "Lessons", "What to do differently: open and closed, and where the trouble returned."),
                Link.of("Sheet for the next night", HERE.to(Address.SHEET)),
                lessons.stream().filter(LessonState::open).map(this::row).toList(),
                lessons.stream().filter(l -> !l.open()).map(this::row).toList());
    }

    private LessonsPage.Row row(LessonState lesson) {
        Optional<EntrySheet> closer = lesson.closedBy().flatMap(ledger::entry);
        return new LessonsPage.Row(
                lesson.about(),
                lesson.todo(),
                link(lesson.openedBy()),
                night(lesson.openedBy()),
                closer.map(sheet -> ledger.entryLink(HERE, sheet)).orElse(Link.plain("")),
                lesson.closedBy().map(this::night).orElse(""),
                lesson.seenAgain().stream()
                        .map(slug -> Link.of(night(slug), link(slug).href()))
                        .toList());
    }

    private Link link(String slug) {
        return ledger.entry(slug).map(sheet -> ledger.entryLink(HERE, sheet)).orElse(Link.plain(slug));
    }

    private String night(String slug) {
        return ledger.entry(slug)
                .flatMap(sheet -> sheet.night().map(Object::toString))
                .orElse(slug);
    }
}
