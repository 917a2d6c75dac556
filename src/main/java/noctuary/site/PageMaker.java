package noctuary.site;

import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Supplier;

/** Makes the pages of a site that do not stand already, and knows which there are. Safe for several threads. */
final class PageMaker {
    private static final byte[] NONE = {};

    private final Templates templates;
    private final Draft draft;
    private final PageModels models;
    private final Queue<MadePage> pages = new ConcurrentLinkedQueue<>();

    PageMaker(Templates templates, Draft draft, PageModels models) {
        this.templates = templates;
        this.draft = draft;
        this.models = models;
    }

    /** All but those of entries, by path. */
    List<MadePage> made() {
        return pages.stream().sorted(Comparator.comparing(MadePage::path)).toList();
    }

    /** @param told stands for all that the page shows, where that can be told before it is made; else empty */
    void make(Address address, PageKind kind, String told, Supplier<Record> model) throws IOException {
        pages.add(stands(new MadePage(address.path(), kind, told), model, true));
    }

    /** As {@link #make}, of a page whose model is kept elsewhere. */
    void entry(Address address, String told, Supplier<Record> model) throws IOException {
        stands(new MadePage(address.path(), PageKind.ENTRY, told), model, false);
    }

    private MadePage stands(MadePage told, Supplier<Record> model, boolean kept) throws IOException {
        if (draft.take(told.path(), told.shown())) {
            return told;
        }
        Record now = model.get();
        boolean named = !told.shown().isEmpty();
        byte[] packed = named && !kept ? NONE : models.pack(told.kind(), now);
        MadePage page = named ? told : new MadePage(told.path(), told.kind(), PageModels.digest(packed));
        if (named || !draft.take(page.path(), page.shown())) {
            draft.write(page.path(), page.shown(), templates.fill(page.kind().template(), now));
            if (kept) {
                models.keep(page, packed);
            }
        }
        return page;
    }
}
