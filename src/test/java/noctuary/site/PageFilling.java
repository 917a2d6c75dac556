package noctuary.site;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import noctuary.site.page.ChangePage;
import noctuary.site.page.ChangesPage;
import noctuary.site.page.ChoicesPage;
import noctuary.site.page.DownloadsPage;
import noctuary.site.page.EntryPage;
import noctuary.site.page.FindPage;
import noctuary.site.page.JournalPage;
import noctuary.site.page.LessonsPage;
import noctuary.site.page.NightsPage;
import noctuary.site.page.RigPage;
import noctuary.site.page.RigsPage;
import noctuary.site.page.SheetPage;
import noctuary.site.page.TargetPage;
import noctuary.site.page.TargetsPage;

/** Our templates for tests of other rooms, which fill them with models of their own making. */
public final class PageFilling {
    /** Every template with the record that it takes; the method page has no values. */
    public static final Map<String, Class<? extends Record>> PAGES = pages();

    private final Templates templates;

    public PageFilling() throws IOException {
        templates = new Templates(null);
    }

    private static Map<String, Class<? extends Record>> pages() {
        Map<String, Class<? extends Record>> pages = new TreeMap<>();
        pages.put("change.ftlh", ChangePage.class);
        pages.put("changes.ftlh", ChangesPage.class);
        pages.put("choices.ftlh", ChoicesPage.class);
        pages.put("data.ftlh", DownloadsPage.class);
        pages.put("entry.ftlh", EntryPage.class);
        pages.put("find.ftlh", FindPage.class);
        pages.put("journal.ftlh", JournalPage.class);
        pages.put("lessons.ftlh", LessonsPage.class);
        pages.put("nights.ftlh", NightsPage.class);
        pages.put("rig.ftlh", RigPage.class);
        pages.put("rigs.ftlh", RigsPage.class);
        pages.put("sheet.ftlh", SheetPage.class);
        pages.put("target.ftlh", TargetPage.class);
        pages.put("targets.ftlh", TargetsPage.class);
        return pages;
    }

    public String fill(String template, Record page) throws IOException {
        return StandardCharsets.UTF_8.decode(templates.fill(template, page)).toString();
    }
}
