package noctuary.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.effect.Amount;
import noctuary.effect.Effect;
import noctuary.effect.StarFates;
import noctuary.entry.Entry;

/** What the numbers of a step say in words. Silent where a number could be so by chance. */
final class StepFindings {
    private static final double FAINT_SNR = 20;
    private static final int FEWEST_FAINT = 20;
    private static final double CALMER = 0.9;
    private static final double ROUGHER = 1.1;
    private static final double CUT_PERCENT = 1;
    private static final double BURNT_PERCENT = 0.5;
    private static final double WIDTH_SHARE = 0.05;
    private static final int INVENTED = 3;
    private static final double RING_PERCENT = 2;
    private static final double BLOTCHY = 0.6;
    private static final double WAS_CLEAR = 0.3;
    private static final double DETAIL_LEFT = 0.7;
    private static final double SIGMAS = 3;

    private final Entry.Version version;
    private final Effect effect;
    private final List<Observation> found = new ArrayList<>();

    private StepFindings(Entry.Version version, Effect effect) {
        this.version = version;
        this.effect = effect;
    }

    static List<Observation> of(Entry.Version version, Effect effect) {
        StepFindings findings = new StepFindings(version, effect);
        findings.noise();
        findings.faintStars();
        findings.ends();
        ColourCast.of(effect).ifPresent(cast -> findings.add("background-cast", cast.text(), cast.evidence()));
        findings.shapes();
        findings.structure();
        return findings.found;
    }

    private void noise() {
        double ratio = value(effect.noiseRatio(1));
        if (ratio < CALMER) {
            Optional<Double> lost = faintLost();
            String stars = lost.map(l ->
                            l < 0.005 ? " and none of the faint stars" : " and " + percent(l) + " of the faint stars")
                    .orElse("");
            add(
                    "noise-taken",
                    name("noise", "these steps") + " took " + percent(1 - ratio) + " of the noise" + stars,
                    ratios());
        } else if (ratio > ROUGHER) {
            add("noise-raised", name("sharp", "these steps") + " raised the noise by " + percent(ratio - 1), ratios());
        }
    }

    /** Stars lost though noise cannot be told, or was not taken. */
    private void faintStars() {
        boolean told = value(effect.noiseRatio(1)) < CALMER;
        faintLost().filter(lost -> lost >= 0.02 && !told).ifPresent(lost -> {
            StarFates fates = effect.fates().orElseThrow();
            add(
                    "stars-lost",
                    percent(lost) + " of the faint stars are gone",
                    fates.lost() + " of " + (fates.lost() + fates.kept())
                            + " stars keep less than half of their light");
        });
        effect.fates()
                .filter(f -> f.invented() >= INVENTED)
                .ifPresent(f -> add(
                        "stars-invented",
                        f.invented() + " stars are in the picture that are not in what it came from",
                        "their light is five sigmas above the noise, and less than half of it was there before"));
    }

    private void ends() {
        double cut = value(effect.backgroundCutPercent());
        if (cut >= CUT_PERCENT) {
            add(
                    "background-cut",
                    "the black point cuts " + rounded(cut) + " % of the true background",
                    "share of background pixels, stars left out, that are black in any colour; of all pixels "
                            + rounded(effect.clippedBlackPercent()) + " %");
        }
        if (effect.clippedWhitePercent() >= BURNT_PERCENT) {
            add(
                    "burnt-out",
                    rounded(effect.clippedWhitePercent()) + " % of the picture is burnt to full white",
                    "pixels at full white in any colour");
        }
    }

    private void shapes() {
        double ratio = value(effect.fwhmRatio());
        if (Math.abs(ratio - 1) > Math.max(WIDTH_SHARE, SIGMAS * effect.fwhmRatioError())) {
            add(
                    ratio > 1 ? "stars-wider" : "stars-narrower",
                    "stars are " + percent(Math.abs(ratio - 1)) + (ratio > 1 ? " wider" : " narrower"),
                    String.format(
                            Locale.ROOT,
                            "median ratio of the width of the same stars %.3f ± %.3f, the stretch undone",
                            ratio,
                            effect.fwhmRatioError()));
        }
        double ring = value(effect.darkRingPercent());
        if (ring > RING_PERCENT) {
            add(
                    "dark-rings",
                    "bright stars wear dark rings, " + rounded(ring) + " % of their height deep",
                    "median over bright stars");
        }
        double halo = value(effect.haloPercent());
        if (halo > RING_PERCENT) {
            add(
                    "halos",
                    "bright stars have halos, " + rounded(halo) + " % of their height",
                    "median over bright stars, two to four star widths out");
        }
    }

    private void structure() {
        double after = value(effect.neighbours().after());
        double before = value(effect.neighbours().before());
        if (after > BLOTCHY && before < WAS_CLEAR) {
            add(
                    "blotchy",
                    "what noise is left is blotchy",
                    String.format(
                            Locale.ROOT,
                            "neighbouring pixels of the background correlate by %.2f, before by %.2f",
                            after,
                            before));
        }
        double detail = value(effect.detailKept());
        if (detail < DETAIL_LEFT) {
            add(
                    "detail-lost",
                    percent(1 - detail) + " of the fine structure in bright parts is gone",
                    "power at periods of 4 to 8 px in bright parts without stars, over that of what it came from under the same stretch");
        }
    }

    private Optional<Double> faintLost() {
        return faintLost(effect).stream().boxed().findFirst();
    }

    /** Share of the stars below {@value #FAINT_SNR} sigmas that are lost; nothing for too few. */
    static OptionalDouble faintLost(Effect effect) {
        return effect.fates().map(f -> f.lostShare(FAINT_SNR, FEWEST_FAINT)).orElse(OptionalDouble.empty());
    }

    private String ratios() {
        StringBuilder text = new StringBuilder("noise over that of "
                + (version.from().equals("stack") ? "the stack" : version.from()) + " under the same stretch:");
        for (Effect.Scale scale : effect.noise()) {
            if (scale.ratio().value().isPresent()) {
                text.append(String.format(
                        Locale.ROOT, " %.2f at %d px,", scale.ratio().value().getAsDouble(), scale.sizePx()));
            }
        }
        effect.fates()
                .ifPresent(f -> text.append(" ")
                        .append(f.lost())
                        .append(" of ")
                        .append(f.lost() + f.kept())
                        .append(" stars lost,"));
        String said = text.substring(0, text.length() - 1);
        return effect.lossy() ? said + "; saving as JPEG took part in it" : said;
    }

    /** The step whose name holds a word, as typed, else what stands for all. */
    private String name(String word, String otherwise) {
        return version.steps().stream()
                .filter(step -> step.choice().toLowerCase(Locale.ROOT).contains(word))
                .reduce((first, last) -> last)
                .map(step -> step.choice() + (step.setting().isEmpty() ? "" : " " + step.setting()))
                .orElse(otherwise);
    }

    private void add(String id, String text, String evidence) {
        found.add(
                new Observation("version-" + id, Character.toUpperCase(text.charAt(0)) + text.substring(1), evidence));
    }

    private static double value(Amount amount) {
        return amount.value().orElse(Double.NaN);
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    private static String rounded(double percent) {
        return percent >= 10 ? "" + Math.round(percent) : String.format(Locale.ROOT, "%.1f", percent);
    }
}
