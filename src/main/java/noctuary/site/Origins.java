package noctuary.site;

import java.util.List;
import noctuary.fact.Origin;
import noctuary.site.page.Link;
import noctuary.site.page.OriginNote;

/** Origins as printed on a page at one address. */
final class Origins {
    private final Address page;
    private final Discretion discretion;

    Origins(Address page, Discretion discretion) {
        this.page = page;
        this.discretion = discretion;
    }

    OriginNote note(Origin origin) {
        if (origin instanceof Origin.Typed typed) {
            String where = discretion.file(typed.file()) + ", line " + typed.line();
            return quoted("typed", where, typed.key() + ": " + typed.text());
        }
        if (origin instanceof Origin.Header header) {
            return quoted("header", discretion.file(header.file()), header.card() + " = " + header.text());
        }
        if (origin instanceof Origin.Measured measured) {
            String where = discretion.file(measured.file());
            return new OriginNote("measured", where, "", "", method(measured.method()), List.of());
        }
        Origin.Derived derived = (Origin.Derived) origin;
        List<OriginNote.Input> inputs = derived.inputs().stream()
                .map(input -> new OriginNote.Input(
                        discretion.file(input.name()), discretion.text(input.value()), note(input.origin())))
                .toList();
        return new OriginNote("computed", "", "", derived.formula(), method(derived.method()), inputs);
    }

    private OriginNote quoted(String by, String where, String quote) {
        return new OriginNote(by, where, discretion.text(quote), "", Link.plain(""), List.of());
    }

    /** To the method's section; to the top of the page when there is no such section. */
    Link method(String id) {
        String href = page.to(Address.METHOD);
        return Methods.title(id).map(title -> Link.of(title, href + "#" + id)).orElse(Link.of("method", href));
    }
}
