package noctuary.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import noctuary.effect.Amount;
import noctuary.effect.Effect;
import noctuary.effect.StarFates;
import noctuary.measure.VersionSheet;
import noctuary.site.page.Link;
import noctuary.site.page.VersionEffect;

/** What a version cost and gained, as printed. */
final class VersionEffects {
    private static final String PERCENT = "\u00a0%";

    private final Address page;
    private final Discretion discretion;

    VersionEffects(Address page, Discretion discretion) {
        this.page = page;
        this.discretion = discretion;
    }

    VersionEffect of(VersionSheet sheet) {
        Link method = Link.of("how this is measured", page.to(Address.METHOD) + "#version-stretch");
        if (sheet.effect().isEmpty()) {
            String why = discretion.text(sheet.whyNot());
            return new VersionEffect(why, List.of(), List.of(), List.of(), "", method);
        }
        Effect effect = sheet.effect().get();
        return new VersionEffect(
                "",
                sheet.findings().stream()
                        .map(f -> new VersionEffect.Finding(f.text(), f.evidence()))
                        .toList(),
                figures(effect),
                effect.fates().map(VersionEffects::fates).orElse(List.of()),
                how(effect, sheet.version().from()),
                method);
    }

    private static List<VersionEffect.Figure> figures(Effect e) {
        List<VersionEffect.Figure> rows = new ArrayList<>();
        for (Effect.Scale scale : e.noise()) {
            rows.add(figure("Noise at " + scale.sizePx() + " px", scale.ratio(), "× ", 2, ""));
        }
        rows.add(pair(
                "Correlation of neighbouring noise",
                e.neighbours().before(),
                e.neighbours().after()));
        rows.add(figure("Star width", e.fwhmRatio(), "× ", 3, error(e)));
        rows.add(figure("Ellipticity, change", e.ellipticityChange(), "", 3, ""));
        rows.add(invented(e));
        rows.add(figure("Fine structure left (power at 4 to 8 px)", e.detailKept(), "× ", 2, ""));
        rows.add(figure("Structural similarity", e.similarity(), "", 3, ""));
        rows.add(figure("Dark rings", e.darkRingPercent(), "", 1, PERCENT));
        rows.add(figure("Halos", e.haloPercent(), "", 1, PERCENT));
        rows.add(figure("Black, of all pixels", Amount.of(e.clippedBlackPercent()), "", 2, PERCENT));
        rows.add(figure("Full white, of all pixels", Amount.of(e.clippedWhitePercent()), "", 2, PERCENT));
        rows.add(figure("True background cut to black", e.backgroundCutPercent(), "", 2, PERCENT));
        if (e.castPercent().size() == 3) {
            rows.add(new VersionEffect.Figure("Background colour, red, green, blue", cast(e.castPercent()), ""));
        }
        return rows;
    }

    private static String error(Effect e) {
        return e.fwhmRatioError() > 0 ? " ± " + Numerals.fixed(e.fwhmRatioError(), 3) : "";
    }

    private static String cast(List<Double> cast) {
        return String.join(
                ", ",
                cast.stream()
                        .map(c -> (c > 0 ? "+" : "") + Numerals.fixed(c, 1) + PERCENT)
                        .toList());
    }

    private static VersionEffect.Figure invented(Effect e) {
        String why = e.fates().isPresent() ? "" : e.whyNot();
        String value = e.fates().map(f -> "" + f.invented()).orElse("");
        return new VersionEffect.Figure("Stars invented", value, why);
    }

    private static VersionEffect.Figure pair(String label, Amount before, Amount after) {
        Optional<String> why =
                before.value().isPresent() && after.value().isPresent() ? Optional.empty() : Optional.of(after.why());
        String value = why.isPresent()
                ? ""
                : Numerals.fixed(after.value().getAsDouble(), 2) + ", before "
                        + Numerals.fixed(before.value().getAsDouble(), 2);
        return new VersionEffect.Figure(label, value, why.orElse(""));
    }

    private static VersionEffect.Figure figure(String label, Amount amount, String before, int decimals, String after) {
        return amount.value().isPresent()
                ? new VersionEffect.Figure(
                        label, before + Numerals.fixed(amount.value().getAsDouble(), decimals) + after, "")
                : new VersionEffect.Figure(label, "", amount.why());
    }

    private static List<VersionEffect.Fate> fates(StarFates fates) {
        return fates.bins().stream()
                .filter(bin -> bin.all() > 0)
                .map(bin -> new VersionEffect.Fate(
                        range(bin), bin.all(), bin.lost(), Math.round(100.0 * bin.lost() / bin.all()) + PERCENT))
                .toList();
    }

    private static String range(StarFates.Bin bin) {
        String from = Numerals.trimmed(bin.fromSnr(), 0);
        if (Double.isInfinite(bin.toSnr())) {
            return "from " + from;
        }
        return bin.fromSnr() == 0
                ? "below " + Numerals.trimmed(bin.toSnr(), 0)
                : from + " to " + Numerals.trimmed(bin.toSnr(), 0);
    }

    private static String how(Effect e, String from) {
        String origin = from.equals("stack") ? "the stack" : "“" + from + "”";
        String laid = e.laid()
                .map(l -> "Laid on " + origin + " by " + Numerals.count(l.matched(), "star", "stars") + " (rms "
                        + Numerals.fixed(l.rmsPx(), 2) + "\u00a0px)"
                        + (l.resampled() ? ", which was resampled onto its grid. " : ", pixel on pixel. "))
                .orElse("");
        String stretch = e.stretch()
                .map(s -> s.strength().value().isPresent()
                        ? "Both stand under the stretch estimated from their pixels: "
                                + curve(s.strength().value().getAsDouble()) + ", background at "
                                + Numerals.fixed(100 * s.background(), 1) + PERCENT + " of white."
                        : "Both stand under a stretch estimated from their pixels; "
                                + s.strength().why() + ".")
                .orElse("Not compared further: " + e.whyNot() + ".");
        String lossy = e.lossy() ? " Saving as JPEG changes fine noise by itself and is part of every number." : "";
        return laid + stretch + lossy;
    }

    private static String curve(double strength) {
        return strength < 0.3 ? "a straight line" : "asinh " + Numerals.fixed(strength, strength < 10 ? 1 : 0);
    }
}
