package noctuary.review;

import java.time.LocalDate;
import java.util.OptionalDouble;

/**
 * What one night gave on one target for one measure: the median over its usable frames, or the stack's value.
 *
 * @param slug entry it comes from
 * @param target as the sheets name it, the same spelling for the same object
 * @param site id, empty when the entry names none
 * @param filter as the keeper wrote it, empty for none
 * @param recipe the other steps of a picture, empty for a night under the sky
 * @param frames that the value was taken from; 1 for a stack
 * @param airmass median over them
 * @param moonMagnitudes by how much the Moon brightened the sky at the target, magnitudes, median over them; 0 without Moon
 */
public record NightValue(
        String slug,
        LocalDate night,
        String target,
        String rig,
        String site,
        String filter,
        String recipe,
        double value,
        int frames,
        OptionalDouble airmass,
        OptionalDouble moonMagnitudes) {
    /** Under the sky. */
    public NightValue(
            String slug,
            LocalDate night,
            String target,
            String rig,
            String site,
            String filter,
            double value,
            int frames,
            OptionalDouble airmass,
            OptionalDouble moonMagnitudes) {
        this(slug, night, target, rig, site, filter, "", value, frames, airmass, moonMagnitudes);
    }

    /** Of a night under the sky. */
    static NightValue of(EntryNight night, double value, int frames) {
        return new NightValue(
                night.slug(),
                night.night(),
                night.target(),
                night.rig(),
                night.site(),
                night.filter(),
                value,
                frames,
                night.sky().airmass(),
                night.sky().moonMagnitudes());
    }
}
