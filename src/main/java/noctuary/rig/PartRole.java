package noctuary.rig;

import java.util.List;
import java.util.Locale;

/**
 * What a part does in a rig, told by its name: that is how parts of two rigs are matched.
 *
 * @param name lower case; what the keeper calls the part where no other word says what it does
 */
public record PartRole(Kind kind, String name) {
    private static final List<String> CORRECTORS = List.of("corrector", "flattener", "reducer", "extender");
    private static final List<String> TELESCOPES =
            List.of("tube", "telescope", "refractor", "reflector", "newtonian", "lens");
    private static final List<String> MOUNTS = List.of("mount", "tripod", "pier");

    /** Parts whose numbers stand apart from the train, and the others. */
    public enum Kind {
        TELESCOPE,
        CORRECTOR,
        CAMERA,
        MOUNT,
        OTHER
    }

    public static final PartRole TELESCOPE = new PartRole(Kind.TELESCOPE, "telescope");
    public static final PartRole CORRECTOR = new PartRole(Kind.CORRECTOR, "corrector or reducer");
    public static final PartRole CAMERA = new PartRole(Kind.CAMERA, "camera");
    public static final PartRole MOUNT = new PartRole(Kind.MOUNT, "mount");

    /** The guide camera and the guide scope stay where they are, whatever else is called so. */
    public static PartRole of(String partName) {
        String name = partName.strip().toLowerCase(Locale.ROOT);
        if (name.contains("guid")) {
            return new PartRole(Kind.OTHER, name);
        }
        if (says(name, CORRECTORS)) {
            return CORRECTOR;
        }
        if (name.contains("camera")) {
            return CAMERA;
        }
        if (says(name, TELESCOPES)) {
            return TELESCOPE;
        }
        return says(name, MOUNTS) ? MOUNT : new PartRole(Kind.OTHER, name);
    }

    /** Whether a weight or a price of that name is this part's: a ring, or several, are still the part. */
    public boolean names(String partName) {
        PartRole role = of(partName);
        return role.equals(this)
                || kind == Kind.OTHER && (role.name.equals(name + "s") || role.name.equals(name + " ring"));
    }

    static boolean isCorrector(String partName) {
        return of(partName).equals(CORRECTOR);
    }

    private static boolean says(String name, List<String> words) {
        return words.stream().anyMatch(name::contains);
    }
}
