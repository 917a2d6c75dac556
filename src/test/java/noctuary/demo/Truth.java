package noctuary.demo;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** What one written file truly holds, as a line of {@code truth.csv}. */
record Truth(String line) {
    static final String HEAD =
            "slug,file,kind,rig,site,target,filter,start,exposures,seconds,arcsec_per_px,rotation_deg,mirrored,"
                    + "altitude_deg,airmass,fwhm_px,fwhm_arcsec,ellipticity,corner_fwhm_px,corner_ellipticity,"
                    + "guiding_rms_arcsec,defocus_um,clear,noise";

    /** @param noise sigma of the empty sky in the file's counts, in green for a colour file */
    static Truth of(PlannedEntry entry, Path file, String kind, Optics optics, List<Moment> moments, double noise) {
        Pointing p = optics.pointing();
        Shape middle = optics.shape(p.width() / 2.0, p.height() / 2.0, moments);
        Shape corner = optics.shape(p.width() * 0.93, p.height() * 0.93, moments);
        Moment first = moments.get(0);
        boolean stack = kind.equals("stack");
        int count = !stack ? 1 : entry.filter().equals("RGB") ? 3 * entry.count() : entry.count();
        String name = file.getFileName().toString();
        return new Truth(String.format(
                Locale.ROOT,
                "%s,%s,%s,%s,%s,%s,%s,%s,%d,%.0f,%.5f,%.2f,%s,%.2f,%.4f,%.4f,%.4f,%.4f,%.4f,%.4f,%.2f,%.1f,%.2f,%.3f",
                entry.slug(),
                stack ? name : "lights/" + name,
                kind,
                entry.rig(),
                entry.site(),
                entry.target(),
                entry.filter(),
                first.start(),
                count,
                entry.seconds(),
                p.arcsecPerPx(),
                p.rotationDeg(),
                p.mirrored(),
                mean(moments, Moment::altitudeDeg),
                mean(moments, Moment::airmass),
                middle.fwhmPx(),
                middle.fwhmPx() * p.arcsecPerPx(),
                middle.ellipticity(),
                corner.fwhmPx(),
                corner.ellipticity(),
                entry.guiding(),
                mean(moments, Moment::defocusUm),
                mean(moments, Moment::clear),
                noise));
    }

    private static double mean(List<Moment> moments, ToDoubleFunction<Moment> value) {
        return moments.stream().mapToDouble(value).average().orElse(Double.NaN);
    }
}
