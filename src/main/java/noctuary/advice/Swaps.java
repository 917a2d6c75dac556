package noctuary.advice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import noctuary.measure.RigSheet;
import noctuary.rig.Exchange;
import noctuary.rig.PartRole;
import noctuary.rig.RigSpec;

/**
 * One part swapped for another: every part of a rig for the one that does the same in each other rig, or did in itself
 * before it was replaced. A part that nobody owns yet can be tried as a rig of its own, in whose note only that part
 * stands.
 */
final class Swaps {
    /** Candidates in one table; of more, those of the rigs used last. */
    private static final int MOST = 6;

    private final Map<String, List<Setup>> setups = new LinkedHashMap<>();
    private final SwapColumns columns;

    Swaps(Map<String, RigSheet> rigs, List<EntryContext> entries, OptionalDouble seeing) {
        columns = new SwapColumns(entries, seeing);
        rigs.values().stream()
                .sorted((a, b) -> lastUse(b).compareTo(lastUse(a)))
                .forEach(rig -> setups.put(rig.note().id(), Setup.of(rig)));
    }

    private static LocalDate lastUse(RigSheet rig) {
        return rig.note().to().orElse(LocalDate.MAX);
    }

    /** A table for each part that can be exchanged and would change something. */
    List<WhatIf> around(String id) {
        Setup own = setups.get(id).get(0);
        List<Setup> others = others(id);
        Set<PartRole> roles = new LinkedHashSet<>();
        others.forEach(other -> roles.addAll(Exchange.roles(own.spec(), other.spec())));
        return roles.stream()
                .map(role -> table(own, others, role))
                .filter(table -> table.columns().size() > 1)
                .toList();
    }

    /** What the rig itself was before, then the other rigs as they are. */
    private List<Setup> others(String id) {
        List<Setup> others =
                new ArrayList<>(setups.get(id).subList(1, setups.get(id).size()));
        setups.forEach((other, states) -> {
            if (!other.equals(id)) {
                others.add(states.get(0));
            }
        });
        return others;
    }

    private WhatIf table(Setup own, List<Setup> others, PartRole role) {
        Map<RigSpec, Setup> changed = new LinkedHashMap<>();
        for (Setup other : others) {
            RigSpec spec = Exchange.of(own.spec(), other.spec(), role);
            if (!spec.equals(own.spec())) {
                changed.putIfAbsent(spec, other);
            }
        }
        List<Swap> swaps = new ArrayList<>();
        swaps.add(columns.own(own));
        changed.entrySet().stream()
                .limit(MOST)
                .forEach(e -> swaps.add(columns.with(own, e.getValue(), e.getKey(), role)));
        changed.values().stream()
                .limit(MOST)
                .filter(other -> !other.id().equals(own.id()))
                .map(other -> columns.whole(own, other))
                .filter(whole -> whole.figures().effectiveFocalLengthMm().isPresent())
                .forEach(swaps::add);
        return new WhatIf(role.name(), swaps, Math.max(0, changed.size() - MOST));
    }
}
