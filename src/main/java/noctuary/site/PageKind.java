package noctuary.site;

import noctuary.site.page.ChangePage;
import noctuary.site.page.ChangesPage;
import noctuary.site.page.ChoicesPage;
import noctuary.site.page.DownloadsPage;
import noctuary.site.page.EntryPage;
import noctuary.site.page.FeedPage;
import noctuary.site.page.FindPage;
import noctuary.site.page.JournalPage;
import noctuary.site.page.LessonsPage;
import noctuary.site.page.MethodPage;
import noctuary.site.page.NightsPage;
import noctuary.site.page.RigPage;
import noctuary.site.page.RigsPage;
import noctuary.site.page.SheetPage;
import noctuary.site.page.TargetPage;
import noctuary.site.page.TargetsPage;

/** Which template draws which model. */
public enum PageKind {
    ENTRY("entry.ftlh", EntryPage.class),
    JOURNAL("journal.ftlh", JournalPage.class),
    NIGHTS("nights.ftlh", NightsPage.class),
    FIND("find.ftlh", FindPage.class),
    CHOICES("choices.ftlh", ChoicesPage.class),
    METHOD("method.ftlh", MethodPage.class),
    FEED("feed.ftlx", FeedPage.class),
    LESSONS("lessons.ftlh", LessonsPage.class),
    SHEET("sheet.ftlh", SheetPage.class),
    TARGETS("targets.ftlh", TargetsPage.class),
    TARGET("target.ftlh", TargetPage.class),
    RIGS("rigs.ftlh", RigsPage.class),
    RIG("rig.ftlh", RigPage.class),
    CHANGES("changes.ftlh", ChangesPage.class),
    CHANGE("change.ftlh", ChangePage.class),
    DOWNLOADS("data.ftlh", DownloadsPage.class);

    private final String template;
    private final Class<? extends Record> model;

    PageKind(String template, Class<? extends Record> model) {
        this.template = template;
        this.model = model;
    }

    String template() {
        return template;
    }

    Class<? extends Record> model() {
        return model;
    }
}
