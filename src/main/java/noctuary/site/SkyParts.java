package noctuary.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import noctuary.measure.EntrySheet;
import noctuary.measure.Figure;
import noctuary.measure.TargetSheet;
import noctuary.site.SiteContent.CutStar;
import noctuary.site.SiteContent.Picture;
import noctuary.site.SiteContent.Size;
import noctuary.site.SiteContent.Sky;
import noctuary.site.SiteContent.View;
import noctuary.site.page.Deep;
import noctuary.site.page.Link;
import noctuary.site.page.SkyPart;
import noctuary.site.page.SkyPart.Shown;

/** Attempts on one grid, as the target's page shows them. */
final class SkyParts {
    private static final int MIDDLING = 900;

    private final Ledger ledger;
    private final Address here;
    private final TargetSheet target;
    private final Sky sky;

    private SkyParts(Ledger ledger, Address here, TargetSheet target, Sky sky) {
        this.ledger = ledger;
        this.here = here;
        this.target = target;
        this.sky = sky;
    }

    /** Null for a target with a single attempt that can be shown. */
    static SkyPart of(Ledger ledger, Address here, TargetSheet target) {
        return ledger.sky(target)
                .map(sky -> new SkyParts(ledger, here, target, sky).part())
                .orElse(null);
    }

    /** What the viewer needs of a picture. */
    static Deep deep(Address here, Picture picture) {
        Size largest = picture.sizes().get(picture.sizes().size() - 1);
        return picture.tiles()
                .map(t -> new Deep(
                        here.to(largest.path()), t.width(), t.height(), here.to(t.folder()), t.side(), t.levels()))
                .orElseGet(() -> new Deep(here.to(largest.path()), largest.width(), largest.height(), "", 0, 1));
    }

    private SkyPart part() {
        List<SkyPart.Refused> refused = new ArrayList<>();
        sky.whyNot().forEach((slug, why) -> refused.add(new SkyPart.Refused(entry(slug), why)));
        List<String> places = sky.views().stream()
                .findFirst()
                .map(v -> v.stars().stream().map(CutStar::place).toList())
                .orElse(List.of());
        return new SkyPart(
                told(),
                (int) Math.max(3, Math.min(20, Math.round(10.0 * sky.width() / sky.height()))),
                sky.views().stream().map(this::view).toList(),
                places,
                sky.views().stream().map(this::stars).toList(),
                refused);
    }

    private List<String> told() {
        if (sky.views().size() < 2) {
            return List.of();
        }
        List<String> told = new ArrayList<>();
        Optional<Double> scale =
                reference().flatMap(s -> s.number(Figure.IMAGE_SCALE).map(q -> q.value()));
        String patch = scale.map(s ->
                        arcminutes(sky.width() * sky.scale() * s) + " × " + arcminutes(sky.height() * sky.scale() * s))
                .map(size -> "a patch of " + size)
                .orElse("the same patch");
        told.add(Numerals.count(sky.views().size(), "attempt", "attempts") + " on one grid by their stars alone: "
                + patch + ", " + (sky.northUp() ? "north up, east to the left" : "turned like " + referenceName())
                + ".");
        return told;
    }

    private Optional<EntrySheet> reference() {
        return ledger.entry(sky.reference());
    }

    private String referenceName() {
        return reference().map(s -> "“" + s.entry().title().value() + "”").orElse("the reference");
    }

    private SkyPart.View view(View view) {
        EntrySheet sheet = ledger.entry(view.slug()).orElseThrow();
        Shown own = shown(view.own(), sheet, view.finished() ? "as finished" : "under its own stretch");
        Shown alike = view.alike()
                .map(p -> shown(p, sheet, "under the stretch that all share"))
                .orElse(own);
        return new SkyPart.View(
                view.slug(),
                name(sheet),
                entry(view.slug()),
                caption(sheet),
                alike,
                own,
                view.alike().isPresent());
    }

    private Shown shown(Picture picture, EntrySheet sheet, String how) {
        List<Size> sizes = picture.sizes();
        Size full = sizes.get(sizes.size() - 1);
        Size middling =
                sizes.stream().filter(s -> s.width() >= MIDDLING).findFirst().orElse(full);
        return new Shown(
                here.to(middling.path()),
                sizes.stream()
                        .map(s -> here.to(s.path()) + " " + s.width() + "w")
                        .collect(Collectors.joining(", ")),
                middling.width(),
                middling.height(),
                target.name() + ", " + name(sheet) + ", " + how,
                deep(here, picture));
    }

    private SkyPart.StarRow stars(View view) {
        EntrySheet sheet = ledger.entry(view.slug()).orElseThrow();
        Optional<Double> scale = sheet.number(Figure.IMAGE_SCALE).map(q -> q.value());
        List<SkyPart.Star> cells =
                view.stars().stream().map(star -> star(star, sheet, scale)).toList();
        return new SkyPart.StarRow(entry(view.slug()), caption(sheet), cells);
    }

    private SkyPart.Star star(CutStar star, EntrySheet sheet, Optional<Double> scale) {
        if (star.path().isEmpty()) {
            return new SkyPart.Star("", star.side(), "", "", "");
        }
        String width = scale.map(s -> Numerals.fixed(star.fwhmPx() * s, 2) + "″")
                .orElse(Numerals.fixed(star.fwhmPx(), 2) + " px");
        return new SkyPart.Star(
                here.to(star.path()),
                star.side(),
                "A star at the " + star.place() + " of " + name(sheet),
                width,
                Numerals.fixed(star.ellipticity(), 2));
    }

    private Link entry(String slug) {
        return ledger.entry(slug).map(s -> ledger.entryLink(here, s)).orElse(Link.plain(slug));
    }

    /** Night and rig; the title where neither is known. */
    private String name(EntrySheet sheet) {
        String night = sheet.night().map(Object::toString).orElse("");
        String name = night + (night.isEmpty() || ledger.rigName(sheet).isEmpty() ? "" : ", ") + ledger.rigName(sheet);
        return name.isEmpty() ? sheet.entry().title().value() : name;
    }

    private String caption(EntrySheet sheet) {
        return List.of(
                        sheet.number(Figure.EXPOSURE).map(Numerals::of).orElse(""),
                        sheet.number(Figure.FWHM_ARCSEC)
                                .map(q -> "stars " + Numerals.fixed(q.value(), 2) + "″")
                                .orElse(""))
                .stream()
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(" · "));
    }

    private static String arcminutes(double arcsec) {
        return arcsec >= 3600 ? Numerals.fixed(arcsec / 3600, 2) + "°" : Numerals.fixed(arcsec / 60, 1) + "′";
    }
}
