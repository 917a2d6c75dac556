package noctuary.site;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import noctuary.fact.Origin;
import noctuary.site.page.Link;
import noctuary.site.page.OriginNote;

/** Origins as printed on a page at one address. */
final class Origins {
    private static final int MOST_ONE_BY_ONE = 3;

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
            return new OriginNote("measured", where, "", "", method(measured.method()), List.of(), null);
        }
        Origin.Derived derived = (Origin.Derived) origin;
        Optional<OriginNote.Series> series = series(derived.inputs());
        if (series.isPresent()) {
            return computed(derived, List.of(), series.get());
        }
        List<OriginNote.Input> inputs = derived.inputs().stream()
                .map(input -> new OriginNote.Input(
                        discretion.file(input.name()), discretion.text(input.value()), note(input.origin())))
                .toList();
        return computed(derived, inputs, null);
    }

    private OriginNote computed(Origin.Derived derived, List<OriginNote.Input> inputs, OriginNote.Series series) {
        return new OriginNote("computed", "", "", derived.formula(), method(derived.method()), inputs, series);
    }

    /** Of inputs too many to be told one by one, when each came from its own file the same way. */
    private Optional<OriginNote.Series> series(List<Origin.Input> inputs) {
        if (inputs.size() <= MOST_ONE_BY_ONE) {
            return Optional.empty();
        }
        String way = way(inputs.get(0).origin());
        Link method = measured(inputs.get(0).origin());
        if (way.isEmpty()
                || !inputs.stream()
                        .allMatch(i -> way(i.origin()).equals(way)
                                && measured(i.origin()).equals(method))) {
            return Optional.empty();
        }
        return Optional.of(new OriginNote.Series(
                way, method, inputs.stream().map(this::named).toList()));
    }

    private Link measured(Origin origin) {
        return origin instanceof Origin.Measured measured ? method(measured.method()) : Link.plain("");
    }

    private String named(Origin.Input input) {
        String value = discretion.text(input.value());
        return discretion.namesFiles() ? discretion.file(input.name()) + " " + value : value;
    }

    /** How a number of one file was come by; empty where that is no matter of one file. */
    private static String way(Origin origin) {
        if (origin instanceof Origin.Measured) {
            return "measured on each file";
        }
        if (origin instanceof Origin.Header header) {
            return "card " + header.card() + " of each file’s header";
        }
        return origin instanceof Origin.Derived derived
                        && derived.inputs().stream().allMatch(i -> i.origin() instanceof Origin.Header)
                ? derived.inputs().stream()
                        .map(i -> ((Origin.Header) i.origin()).card())
                        .collect(Collectors.joining(", ", "each file: " + derived.formula() + ", card ", ""))
                : "";
    }

    private OriginNote quoted(String by, String where, String quote) {
        return new OriginNote(by, where, discretion.text(quote), "", Link.plain(""), List.of(), null);
    }

    /** To the method's section; to the top of the page when there is no such section. */
    Link method(String id) {
        String href = page.to(Address.METHOD);
        return Methods.title(id).map(title -> Link.of(title, href + "#" + id)).orElse(Link.of("method", href));
    }
}
