package noctuary.demo;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/**
 * One entry of {@code plan.yaml}: what happened that night, which the keeper's note tells only in part.
 *
 * @param start of the first exposure
 * @param filter empty for the mosaic camera, RGB for a stack of three filters
 * @param keep frames, stack or both
 * @param everyMinutes from start to start of two exposures
 * @param seeing FWHM in arcsec at the zenith
 * @param guiding RMS in arcsec, total
 * @param sky magnitude per square arcsecond
 * @param gradient of the sky, its share from edge to edge
 * @param turn position angle of the sensor's y axis
 * @param shift of the target's centre from the sensor's, pixels
 * @param temperature °C at the start and change an hour
 * @param focus µm from focus at the start and change an hour
 * @param clear share of light that came through, a frame each; all when absent
 * @param shadow share of the field behind something, a frame each; none when absent
 * @param longer factor on the focal length that night
 * @param streaks of a fixed pattern that drifted, ADU of the stack; 0 for none
 * @param pictures made from the stack
 */
record PlannedEntry(
        String slug,
        String rig,
        String site,
        String target,
        Instant start,
        int count,
        double seconds,
        String filter,
        String keep,
        double everyMinutes,
        double seeing,
        double guiding,
        double sky,
        double gradient,
        double turn,
        boolean mirrored,
        double[] shift,
        double[] temperature,
        double[] focus,
        List<Double> clear,
        List<Double> shadow,
        Double longer,
        double streaks,
        List<Picture> pictures) {
    PlannedEntry {
        clear = clear == null ? List.of() : List.copyOf(clear);
        shadow = shadow == null ? List.of() : List.copyOf(shadow);
        longer = longer == null ? 1 : longer;
        pictures = pictures == null ? List.of() : List.copyOf(pictures);
    }

    /**
     * @param stretch factor inside the asinh
     * @param black share of the pixels below black
     * @param smooth strength of the noise reduction, 0 to 1
     */
    record Picture(String file, double stretch, double black, double smooth) {}

    LocalDate date() {
        return LocalDate.parse(slug.substring(0, 10));
    }

    Instant startOf(int frame) {
        return start.plusSeconds(Math.round(60 * everyMinutes * frame));
    }

    boolean keepsFrames() {
        return !keep.equals("stack");
    }

    boolean keepsStack() {
        return !keep.equals("frames");
    }
}
