package noctuary.review;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.keep.Packing;

/**
 * What one night of an entry tells, so that its files need not be looked at again.
 *
 * @param files places of its files among the entry's, {@link #STACK} for the stack
 * @param stacked whether the pixels are those of a combined file
 * @param target one spelling for the same object; empty when not known
 * @param filter of the files, or as typed, joined; empty when none is told
 * @param recipe filter, exposure and gain, as {@link SkyReadings#recipe}
 * @param widths median FWHM of each file, px, as {@link OwnScatter} compares them
 * @param richest the file with the most stars, absent without files
 * @param readings by id of the measure
 * @param skies over each file, while it is being read
 */
record NightTraits(
        LocalDate night,
        List<Integer> files,
        OptionalDouble exposureSeconds,
        NightSky sky,
        boolean first,
        boolean stacked,
        String target,
        String filter,
        String recipe,
        List<Double> widths,
        Optional<Richest> richest,
        Map<String, Reading> readings,
        List<FrameSky> skies) {
    static final int STACK = -1;

    /** The same night with what its files tell. */
    NightTraits telling(String recipeOfFiles, List<Double> widthsOfFiles, Map<String, Reading> all) {
        return new NightTraits(
                night,
                files,
                exposureSeconds,
                sky,
                first,
                stacked,
                target,
                filter,
                recipeOfFiles,
                widthsOfFiles,
                richest,
                all,
                List.of());
    }

    /**
     * @param at place among the night's files
     * @param content identity of its bytes; empty when it is not told
     */
    record Richest(int at, String content) {}

    /** Of all nights of one entry. */
    record All(List<NightTraits> nights) {
        static final Packing<All> PACKING = Packing.of(All.class);
    }
}
