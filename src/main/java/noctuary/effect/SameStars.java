package noctuary.effect;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.stars.Star;
import noctuary.stats.Robust;

/**
 * Shapes of the same stars on the origin and on the picture with its stretch undone.
 *
 * @param fwhmRatio median, widths on one scale
 * @param spread difference of the median ratios of the fainter and of the brighter half, as a share
 * @param fwhmRatioError standard error of it; NaN where absent
 * @param ellipticityChange median, picture minus origin
 */
record SameStars(Amount fwhmRatio, double fwhmRatioError, double spread, Amount ellipticityChange) {
    private static final int FEWEST = 8;
    private static final double LEAST_SNR = 20;
    /** Farthest that the same star may lie from its place, in star widths. */
    private static final double REACH = 0.5;
    /** Largest spread under which one number holds for all. */
    private static final double ALIKE = 0.03;
    /** Of it, twice that of the median of all, from which it is more than chance. */
    private static final double SURE_ERRORS = 2.5;

    static SameStars absent(String why) {
        return new SameStars(Amount.absent(why), Double.NaN, 0, Amount.absent(why));
    }

    /** By how much the picture has its stars wider, in quadrature and in its pixels; 0 where it does not or it is unknown. */
    double smear(double fwhm) {
        double ratio = fwhmRatio.value().orElse(1);
        return fwhm * Math.sqrt(Math.max(0, ratio * ratio - 1));
    }

    static SameStars of(List<Star> origin, List<Star> picture, Laying laying) {
        List<Double> ratios = new ArrayList<>();
        List<Double> changes = new ArrayList<>();
        for (Star star :
                origin.stream().sorted(Comparator.comparingDouble(Star::snr)).toList()) {
            if (star.measured() && star.snr() >= LEAST_SNR) {
                double[] at = laying.onPicture(star);
                nearest(picture, at, REACH * star.fwhmPx() * laying.scale())
                        .filter(Star::measured)
                        .ifPresent(s -> {
                            ratios.add(s.fwhmPx() / star.fwhmPx() / laying.scale());
                            changes.add(s.ellipticity() - star.ellipticity());
                        });
            }
        }
        if (ratios.size() < FEWEST) {
            return absent("only " + ratios.size() + " stars are measured in both");
        }
        double[] all = ratios.stream().mapToDouble(Double::doubleValue).toArray();
        return new SameStars(
                Amount.of(Robust.median(all)),
                Robust.medianError(all),
                spread(all),
                Amount.of(Robust.median(
                        changes.stream().mapToDouble(Double::doubleValue).toArray())));
    }

    /** @param ratios faintest star first */
    private static double spread(double[] ratios) {
        int half = ratios.length / 2;
        double faint = Robust.median(Arrays.copyOf(ratios, half));
        return Math.abs(faint / Robust.median(Arrays.copyOfRange(ratios, half, ratios.length)) - 1);
    }

    /** Absent where the width of bright stars changed by another share than that of faint ones. */
    SameStars alike() {
        if (spread <= ALIKE) {
            return this;
        }
        return without(
                spread > SURE_ERRORS * 2 * fwhmRatioError
                        ? "the widths of bright and of faint stars changed by different shares, so that no one number"
                                + " holds"
                        : "too few stars are measured to tell whether the widths of bright and of faint ones changed by"
                                + " the same share");
    }

    /**
     * Absent where stars became narrower by another share at half height: what sharpening takes from the sky around a star
     * makes a fit narrower than its middle.
     *
     * @param half by {@link HalfHeight}, if known
     */
    SameStars confirmedBy(OptionalDouble half) {
        double ratio = fwhmRatio.value().orElse(1);
        return half.isPresent() && ratio < 1 && Math.abs(ratio / half.getAsDouble() - 1) > ALIKE
                ? without("the widths by a fit and at half of the height changed by different shares, as they do where"
                        + " stretched stars are sharpened, so that no one number holds")
                : this;
    }

    private SameStars without(String why) {
        return new SameStars(Amount.absent(why), Double.NaN, spread, ellipticityChange);
    }

    private static Optional<Star> nearest(List<Star> stars, double[] at, double reach) {
        return stars.stream()
                .filter(s -> Math.abs(s.x() - at[0]) <= reach && Math.abs(s.y() - at[1]) <= reach)
                .min(Comparator.comparingDouble(s -> Math.hypot(s.x() - at[0], s.y() - at[1])))
                .filter(s -> Math.hypot(s.x() - at[0], s.y() - at[1]) <= reach);
    }
}
