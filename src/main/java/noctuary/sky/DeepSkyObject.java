package noctuary.sky;

import java.util.List;

/**
 * One object of the catalogue.
 *
 * @param name designation, spaced as in {@code M 31}, {@code NGC 6888}, {@code Sh2-101}
 * @param sameAs other designations
 * @param commonNames names in general use
 * @param j2000 to about 1 arcmin, some arcmin for wide objects
 * @param constellation IAU abbreviation
 */
public record DeepSkyObject(
        String name,
        List<String> sameAs,
        List<String> commonNames,
        Kind kind,
        Equatorial j2000,
        double widthArcmin,
        double heightArcmin,
        String constellation) {
    public DeepSkyObject {
        sameAs = List.copyOf(sameAs);
        commonNames = List.copyOf(commonNames);
    }

    public enum Kind {
        GALAXY,
        GLOBULAR_CLUSTER,
        OPEN_CLUSTER,
        EMISSION_NEBULA,
        REFLECTION_NEBULA,
        PLANETARY_NEBULA,
        SUPERNOVA_REMNANT,
        STAR_CLOUD,
        ASTERISM,
        DOUBLE_STAR
    }
}
