package noctuary.noise;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import noctuary.noise.Shading.Shadow;
import noctuary.noise.Surface.Patch;
import noctuary.stats.Robust;

/** Finds the largest part of the field that is darker than the rest, reaches the edge, and is clearly set off. */
final class ShadowSearch {
    private static final double LEAST_SCATTERS = 6;
    private static final double LEAST_DEPTH = 0.02;
    private static final double LEAST_FIELD = 0.04;

    private final Surface field;
    private final int columns;
    private final int rows;
    private final boolean[] dark;

    ShadowSearch(Lattice lattice, List<Patch> patches) {
        this.field = Surface.fit(patches, Surface.PLANE + 1);
        this.columns = Patches.columns(lattice);
        this.rows = Patches.rows(lattice);
        this.dark = new boolean[columns * rows];
        for (int i = 0; i < dark.length; i++) {
            Patch patch = field.patches().get(i);
            double missing = -field.residual(patch);
            dark[i] = missing > LEAST_SCATTERS * field.scatter() && missing > LEAST_DEPTH * Math.abs(field.at(patch));
        }
    }

    Optional<Shadow> find() {
        List<Integer> largest = List.of();
        boolean[] seen = new boolean[dark.length];
        for (int i = 0; i < dark.length; i++) {
            if (dark[i] && !seen[i]) {
                List<Integer> region = region(i, seen);
                largest = region.size() > largest.size() && reachesEdge(region) ? region : largest;
            }
        }
        return largest.size() < LEAST_FIELD * dark.length ? Optional.empty() : Optional.of(shadow(largest));
    }

    private List<Integer> region(int start, boolean[] seen) {
        List<Integer> region = new ArrayList<>();
        Deque<Integer> open = new ArrayDeque<>(List.of(start));
        seen[start] = true;
        while (!open.isEmpty()) {
            int i = open.pop();
            region.add(i);
            visit(i % columns > 0 ? i - 1 : i, seen, open);
            visit(i % columns < columns - 1 ? i + 1 : i, seen, open);
            visit(i >= columns ? i - columns : i, seen, open);
            visit(i + columns < dark.length ? i + columns : i, seen, open);
        }
        return region;
    }

    private void visit(int i, boolean[] seen, Deque<Integer> open) {
        if (dark[i] && !seen[i]) {
            seen[i] = true;
            open.push(i);
        }
    }

    private boolean reachesEdge(List<Integer> region) {
        return region.stream()
                .anyMatch(i ->
                        i % columns == 0 || i % columns == columns - 1 || i < columns || i >= dark.length - columns);
    }

    /** The shaded part proper: where at least half of its light is missing that is missing in the middle of it. */
    private Shadow shadow(List<Integer> region) {
        double half = depth(region) / 2;
        List<Integer> shaded = region.stream().filter(i -> missing(i) >= half).toList();
        double x = shaded.stream().mapToInt(i -> i % columns).average().orElseThrow();
        double y = shaded.stream().mapToInt(i -> i / columns).average().orElseThrow();
        return new Shadow(
                100.0 * shaded.size() / dark.length, 100 * depth(shaded), (x + 0.5) / columns, (y + 0.5) / rows);
    }

    private double depth(List<Integer> region) {
        return Robust.median(region.stream().mapToDouble(this::missing).toArray());
    }

    private double missing(int i) {
        Patch patch = field.patches().get(i);
        return -field.residual(patch) / field.at(patch);
    }
}
