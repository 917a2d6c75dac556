package noctuary.site;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import noctuary.keep.Digest;
import noctuary.keep.Drawer;
import noctuary.keep.Memo;
import noctuary.keep.Packing;
import noctuary.site.page.EntryPage;

/**
 * What pages show, kept so that another template does not mean to work it out again. All that a page shows is in its
 * model: the same model, the same page. Safe for several threads.
 */
final class PageModels {
    private final Memo memo;
    private final Map<PageKind, Drawer<? extends Record>> drawers = new ConcurrentHashMap<>();

    PageModels(Memo memo) {
        this.memo = memo;
    }

    /** Pages of entries, without words and ways. */
    static Drawer<EntryPage> entries(Memo memo) {
        return memo.drawer("entry-pages", Packing.withGaps(EntryPage.class));
    }

    byte[] pack(PageKind kind, Record model) {
        return pack(drawer(kind), model);
    }

    /** One word that stands for a packed model. */
    static String digest(byte[] packed) {
        return new Digest().bytes(packed).hex();
    }

    void keep(MadePage page, byte[] packed) {
        drawer(page.kind()).keep(name(page), page.shown(), packed);
    }

    Optional<? extends Record> find(MadePage page) {
        return drawer(page.kind()).find(name(page), page.shown());
    }

    /** No folders within the drawer: one of them may be a link to elsewhere. */
    private static String name(MadePage page) {
        return page.path().replace('/', '~');
    }

    private Drawer<? extends Record> drawer(PageKind kind) {
        return drawers.computeIfAbsent(kind, k -> memo.drawer("pages", Packing.withGaps(k.model())));
    }

    @SuppressWarnings("unchecked")
    private static <T extends Record> byte[] pack(Drawer<T> drawer, Record model) {
        return drawer.pack((T) model);
    }
}
