package noctuary.site;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import noctuary.advice.PriceOfGain;
import noctuary.advice.RefocusRule;
import noctuary.advice.RigDesk;
import noctuary.measure.RigSheet;
import noctuary.site.page.DeskPart;
import noctuary.site.page.Drawing;
import noctuary.site.page.Link;
import noctuary.sky.Catalogue;
import noctuary.sky.DeepSkyObject;

/** The rig desk as printed. */
final class DeskParts {
    private final Ledger ledger;
    private final Address here;
    private final RigSheet rig;
    private final RigDesk desk;

    DeskParts(Ledger ledger, Address here, RigSheet rig) {
        this.ledger = ledger;
        this.here = here;
        this.rig = rig;
        this.desk = ledger.advice().desks().get(rig.note().id());
    }

    DeskPart part() {
        RefocusRule rule = ledger.advice().refocus().get(rig.note().id());
        return new DeskPart(
                new AdvisedParts(ledger).findings(desk.findings()),
                framing(),
                focal(),
                desk.shapes().stream().map(this::shape).toList(),
                focus(rule),
                gains(),
                desk.swaps().stream().map(w -> new SwapTable(ledger, w).part()).toList());
    }

    private List<DeskPart.GainRow> gains() {
        return PriceOfGain.of(ledger.content().reviews(), ledger.content().rigs()).stream()
                .filter(gain -> gain.rig().equals(rig.note().id()))
                .map(gain -> new DeskPart.GainRow(
                        Link.of(gain.what(), here.to(Address.change(gain.change()))),
                        gain.sentences().stream().map(ledger.discretion()::text).toList()))
                .toList();
    }

    private List<String> focus(RefocusRule rule) {
        List<String> lines = new ArrayList<>();
        if (rule != null) {
            lines.add(rule.sentence());
            lines.addAll(rule.besides());
        }
        desk.warmth().ifPresent(lines::add);
        return lines;
    }

    /** The largest object that was tried with this rig. */
    private Drawing framing() {
        return ledger.entries(rig.slugs()).stream()
                .flatMap(sheet -> sheet.target().value().flatMap(Catalogue::find).stream())
                .filter(o -> o.widthArcmin() > 0)
                .max(Comparator.comparingDouble(DeepSkyObject::widthArcmin).thenComparing(DeepSkyObject::name))
                .map(target -> new Frames(ledger).around(target))
                .orElse(null);
    }

    private List<String> focal() {
        if (desk.focal().isPresent()) {
            return focal(desk.focal().get());
        }
        if (desk.byStars().isPresent()) {
            return List.of(byStars(desk.byStars().get()));
        }
        return desk.whyNoFocal().isEmpty()
                ? List.of()
                : List.of("Effective focal length not measured: " + desk.whyNoFocal() + ".");
    }

    private String byStars(RigDesk.ByStars f) {
        return "Effective focal length by stars shared with an image of known scale: " + Numerals.fixed(f.mm(), 2)
                + (f.errorMm() < 0.005 ? " ± less than 0.01" : " ± " + Numerals.fixed(f.errorMm(), 2))
                + "\u00a0mm, from "
                + Numerals.count(f.stars(), "star", "stars") + " of " + title(f.slug()) + ", scale of "
                + title(f.reference()) + ".";
    }

    private String title(String slug) {
        return ledger.entry(slug)
                .map(sheet -> ledger.entryLink(here, sheet).text())
                .orElse(slug);
    }

    private static List<String> focal(RigDesk.Focal f) {
        List<String> lines = new ArrayList<>();
        String spread = f.nights() > 2 && f.spreadMm() >= 0.05 ? " ± " + Numerals.fixed(f.spreadMm(), 1) : "";
        lines.add("Effective focal length as the sky tells it: " + Numerals.fixed(f.measuredMm(), 1) + spread
                + "\u00a0mm, from " + Numerals.count(f.nights(), "entry", "entries")
                + (f.nominalMm().isPresent()
                        ? "; the note says " + Numerals.fixed(f.nominalMm(), 1) + "\u00a0mm."
                        : "."));
        if (f.factor().isPresent()) {
            double share = f.spreadMm() / f.measuredMm();
            String error =
                    spread.isEmpty() ? "" : " ± " + Numerals.fixed(f.factor().getAsDouble() * share, 4);
            lines.add("True factor of corrector or reducer: " + Numerals.fixed(f.factor(), 4) + error
                    + ", if the telescope’s own focal length is as written.");
        }
        return lines;
    }

    private DeskPart.ShapeRow shape(RigDesk.Shape s) {
        Link entry = ledger.entry(s.slug())
                .map(sheet -> ledger.entryLink(here, sheet))
                .orElse(Link.plain(s.slug()));
        return new DeskPart.ShapeRow(
                entry,
                s.night().toString(),
                Numerals.fixed(s.centrePx(), 2),
                Numerals.fixed(s.risePx(), 2) + " ± " + Numerals.fixed(s.riseErrorPx(), 2),
                Numerals.fixed(s.tiltPx(), 2) + " ± " + Numerals.fixed(s.tiltErrorPx(), 2),
                s.says());
    }
}
