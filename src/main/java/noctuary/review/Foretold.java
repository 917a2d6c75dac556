package noctuary.review;

import java.util.OptionalDouble;

/**
 * What arithmetic says of a change, beside what the sky showed.
 *
 * @param before by arithmetic; absent where an input of the rig is
 * @param after as {@code before}
 * @param foretold after over before, or for magnitudes after less before
 * @param shown the same as measured; absent when the sky cannot show it, or did not
 * @param remark more or less than foretold, in a few words; or why nothing is shown
 */
public record Foretold(
        String label,
        String unit,
        int decimals,
        boolean difference,
        OptionalDouble before,
        OptionalDouble after,
        OptionalDouble foretold,
        OptionalDouble shown,
        String remark) {}
