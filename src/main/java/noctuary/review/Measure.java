package noctuary.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;

/**
 * A number that can be compared between two sides.
 *
 * @param id as in the downloads
 * @param unit as printed; empty for none
 * @param lessIsBetter whether a smaller value is what a keeper wants
 * @param ratio whether it is positive and changes by shares: then it is compared on logarithms, so that a fifth less of a
 *     poor night counts like a fifth less of a good one
 * @param follows conditions that move the value as it stands, the strongest first. Airmass and Moon are taken out by
 *     regression before a verdict; nights of one target, or through one filter, are compared with each other only
 * @param feels conditions in which the two sides must overlap, those it follows included
 */
public record Measure(
        String id,
        String label,
        String unit,
        boolean lessIsBetter,
        boolean ratio,
        List<Influence> follows,
        List<Influence> feels) {
    public Measure {
        follows = List.copyOf(follows);
        LinkedHashSet<Influence> all = new LinkedHashSet<>(follows);
        all.addAll(feels);
        feels = List.copyOf(all);
    }

    /** A value of the instrument alone, compared by differences. */
    public Measure(String id, String label, String unit, boolean lessIsBetter) {
        this(id, label, unit, lessIsBetter, false, List.of(), List.of());
    }

    public Measure byShare() {
        return new Measure(id, label, unit, lessIsBetter, true, follows, feels);
    }

    public Measure following(Influence... conditions) {
        return new Measure(id, label, unit, lessIsBetter, ratio, Arrays.asList(conditions), feels);
    }

    /** Adds to what the sides must overlap in. */
    public Measure feeling(Influence... conditions) {
        List<Influence> all = new ArrayList<>(feels);
        all.addAll(Arrays.asList(conditions));
        return new Measure(id, label, unit, lessIsBetter, ratio, follows, all);
    }

    /** Taken through the air: the sides must overlap in airmass, Moon, season and site. */
    public Measure throughTheSky() {
        return feeling(Influence.AIRMASS, Influence.MOON, Influence.SEASON, Influence.SITE);
    }

    boolean follows(Influence condition) {
        return follows.contains(condition);
    }

    boolean feels(Influence condition) {
        return feels.contains(condition);
    }
}
