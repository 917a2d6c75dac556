package noctuary.review;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Names the group within which a night is compared. */
final class Strata {
    private final List<Influence> apart;
    private final boolean byTarget;
    private final Set<LocalDate> onBothSides;

    /** @param apart influences whose levels are never mixed */
    Strata(List<Influence> apart, List<Unit> units, boolean byTarget) {
        this.apart = apart;
        this.byTarget = byTarget;
        Set<LocalDate> shared = dates(units, false);
        shared.retainAll(dates(units, true));
        onBothSides = shared;
    }

    /** The closest in the same place: the same night, else the same target. */
    String narrow(Unit unit) {
        LocalDate night = unit.night().night();
        if (onBothSides.contains(night)) {
            return wide(unit) + "\nnight " + night;
        }
        return byTarget ? wide(unit) + "\n" + unit.night().target() : wide(unit);
    }

    /** The widest still comparable: the same site, rig and filter where those matter. */
    String wide(Unit unit) {
        return apart.stream()
                .map(i -> Ground.level(i).apply(unit.night()))
                .collect(Collectors.joining("\n", "all\n", ""));
    }

    private static Set<LocalDate> dates(List<Unit> units, boolean after) {
        return units.stream()
                .filter(u -> u.after() == after)
                .map(u -> u.night().night())
                .collect(Collectors.toSet());
    }
}
