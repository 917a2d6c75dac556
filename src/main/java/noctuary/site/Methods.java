package noctuary.site;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import noctuary.site.page.Link;

/** The sections of the method page: ids, as origins cite them, with titles. A test holds the template to this list. */
final class Methods {
    private static final Map<String, String> TITLES = titles();

    private Methods() {}

    static Optional<String> title(String id) {
        return Optional.ofNullable(TITLES.get(id));
    }

    static List<String> ids() {
        return List.copyOf(TITLES.keySet());
    }

    static List<Link> contents() {
        return TITLES.entrySet().stream()
                .map(e -> Link.of(e.getValue(), "#" + e.getKey()))
                .toList();
    }

    private static Map<String, String> titles() {
        Map<String, String> titles = new LinkedHashMap<>();
        titles.put("exposure", "Exposure");
        titles.put("night", "Night");
        titles.put("image-scale", "Image scale");
        titles.put("focal-length", "Focal length");
        titles.put("field", "Field of view");
        titles.put("focal-ratio", "Focal ratio");
        titles.put("sampling", "Sampling");
        titles.put("diffraction", "Diffraction");
        titles.put("depth-of-focus", "Depth of focus");
        titles.put("detection", "Finding stars");
        titles.put("fwhm", "Star width (FWHM)");
        titles.put("ellipticity", "Ellipticity");
        titles.put("half-flux-radius", "Half-flux radius");
        titles.put("field-map", "Star shapes across the field");
        titles.put("background", "Background and noise");
        titles.put("noise-neighbours", "Noise of neighbours and of large areas");
        titles.put("corner-light", "Light and shade in the corners");
        titles.put("hot-pixels", "Hot pixels");
        titles.put("banding", "Banding");
        titles.put("drift-streak", "Drift streaks");
        titles.put("clipping", "Clipping");
        titles.put("course", "The course of a night");
        titles.put("airmass", "Airmass");
        titles.put("guiding", "Guiding");
        titles.put("back-focus", "Back focus and filter glass");
        titles.put("mount-load", "Mount load");
        titles.put("limits", "What limits an image");
        titles.put("exposure-wanted", "Exposure still wanted");
        titles.put("spacing-tilt", "Spacing and tilt from star shapes");
        titles.put("what-if", "What an exchange changes");
        titles.put("refocus", "When to refocus");
        titles.put("dark-hours", "Where the dark went");
        titles.put("lessons", "Lessons");
        titles.put("matching", "Matching of stars");
        titles.put("same-sky", "The same sky, side by side");
        titles.put("version-stretch", "Versions: the stretch undone");
        titles.put("version-noise", "Versions: noise");
        titles.put("version-stars", "Versions: stars");
        titles.put("version-detail", "Versions: fine structure");
        titles.put("version-ends", "Versions: black, white and colour");
        titles.put("choices", "Choices");
        titles.put("depth", "Depth from the same stars");
        titles.put("foretold", "What arithmetic foretells");
        titles.put("background-rate", "Background rate and noise in an hour");
        titles.put("moonlight", "Sun, Moon and moonlight");
        titles.put("changes", "Before and after a change");
        titles.put("verdicts", "Verdicts");
        titles.put("fair-test", "A fair test");
        titles.put("preview", "Previews");
        titles.put("disagreement", "When two origins disagree");
        return titles;
    }
}
