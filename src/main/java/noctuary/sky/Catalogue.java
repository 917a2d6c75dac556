package noctuary.sky;

import java.text.Normalizer;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Well-known deep-sky objects by any of their names, however written. */
public final class Catalogue {
    private static final List<DeepSkyObject> OBJECTS = CatalogueFile.read();
    private static final Map<String, DeepSkyObject> BY_DESIGNATION = designations();
    private static final Map<String, DeepSkyObject> BY_NAME = commonNames();

    /** Half the height of a common small field; common practice, no source. */
    private static final double POINTING_DEG = 0.7;

    private Catalogue() {}

    public static List<DeepSkyObject> all() {
        return OBJECTS;
    }

    /** The object of that name: {@code M31}, {@code messier 31}, {@code NGC224}, {@code the Andromeda galaxy}. */
    public static Optional<DeepSkyObject> find(String name) {
        Optional<Designation.Found> found = Designation.in(name.strip());
        Optional<DeepSkyObject> object = found.flatMap(f -> Optional.ofNullable(BY_DESIGNATION.get(f.name())));
        if (found.isEmpty() || key(found.get().rest()).isEmpty()) {
            return object.or(() -> Optional.ofNullable(BY_NAME.get(key(name))));
        }
        DeepSkyObject named = BY_NAME.get(key(found.get().rest()));
        return object.filter(o -> o.equals(named));
    }

    /**
     * The object that a frame with this centre was most likely pointed at: the nearest one within 0.7°, or within its
     * own extent.
     *
     * @param raDeg J2000, degrees
     */
    public static Optional<DeepSkyObject> at(double raDeg, double decDeg) {
        Equatorial centre = new Equatorial(raDeg, decDeg);
        return OBJECTS.stream()
                .filter(o -> o.j2000().separationDeg(centre) <= Math.max(POINTING_DEG, o.widthArcmin() / 120))
                .min(Comparator.comparingDouble(o -> o.j2000().separationDeg(centre)));
    }

    /**
     * One spelling for all names of an object, for telling which entries show the same target: {@code M 31} for
     * {@code m31}, {@code NGC 224} or {@code Andromeda Galaxy}. A designation that the catalogue does not hold is
     * spaced in the same manner; any other name comes back with its spaces tidied, as do names that say more than the
     * object's ("M31 panel 2").
     */
    public static String canonicalName(String name) {
        String tidy = name.strip().replaceAll("\\s+", " ");
        return find(tidy)
                .map(DeepSkyObject::name)
                .orElseGet(() -> Designation.in(tidy)
                        .filter(found -> key(found.rest()).isEmpty())
                        .map(Designation.Found::name)
                        .orElse(tidy));
    }

    private static Map<String, DeepSkyObject> designations() {
        Map<String, DeepSkyObject> map = new HashMap<>();
        for (DeepSkyObject object : OBJECTS) {
            map.put(object.name(), object);
            object.sameAs().forEach(other -> map.put(other, object));
        }
        return map;
    }

    /** Full names, and names without their last noun where only one object would answer to that. */
    private static Map<String, DeepSkyObject> commonNames() {
        Map<String, DeepSkyObject> full = new HashMap<>();
        Map<String, DeepSkyObject> cut = new HashMap<>();
        Set<String> ambiguous = new HashSet<>();
        for (DeepSkyObject object : OBJECTS) {
            for (String name : object.commonNames()) {
                full.put(key(name), object);
                String shorter = key(name.replaceAll(" (?:Nebula|Galaxy|Galaxies|Cluster)$", ""));
                DeepSkyObject other = cut.put(shorter, object);
                if (other != null && !other.equals(object)) {
                    ambiguous.add(shorter);
                }
            }
            full.put(key(object.name()), object);
            object.sameAs().forEach(other -> full.put(key(other), object));
        }
        cut.keySet().removeAll(ambiguous);
        cut.putAll(full);
        return cut;
    }

    /** Letters and digits only, without accents, case and a leading article. */
    private static String key(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFKD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("^\\s*the\\s+", "")
                .replaceAll("[^a-z0-9]", "");
    }
}
