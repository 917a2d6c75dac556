package noctuary.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;

/** One part of a rig exchanged for the part that does the same in another. */
public final class Exchange {
    private Exchange() {}

    /** What could be exchanged: telescope, corrector, camera, mount and every part that both trains have. */
    public static List<PartRole> roles(RigSpec own, RigSpec other) {
        List<PartRole> roles =
                new ArrayList<>(List.of(PartRole.TELESCOPE, PartRole.CORRECTOR, PartRole.CAMERA, PartRole.MOUNT));
        own.train().stream()
                .map(p -> PartRole.of(p.name()))
                .filter(role -> has(other, role) && !roles.contains(role))
                .distinct()
                .forEach(roles::add);
        return roles;
    }

    /**
     * The rig with that part of the other. The corrector brings its factor, its distance and its image circle; a part
     * without a weight on one of the two sides leaves the payload unknown.
     *
     * @return the rig itself where the other does not tell what its part is, or has the same
     */
    public static RigSpec of(RigSpec own, RigSpec other, PartRole role) {
        RigSpec changed = numbers(own, other, role.kind());
        boolean besides = role.kind() == PartRole.Kind.OTHER && has(own, role) && has(other, role);
        return changed == own && !besides
                ? own
                : changed.with(
                        train(own, other, role),
                        listed(own.payload(), other.payload(), role, RigSpec.Load::name)
                                .orElse(List.of()));
    }

    /** A part of which the other's train tells nothing has no length and no thread, so that nothing is summed without it. */
    private static List<RigSpec.TrainPart> train(RigSpec own, RigSpec other, PartRole role) {
        Predicate<RigSpec.TrainPart> same = part -> PartRole.of(part.name()).equals(role);
        List<RigSpec.TrainPart> theirs = has(own, role) && !has(other, role)
                ? own.train().stream()
                        .filter(same)
                        .limit(1)
                        .map(Exchange::untold)
                        .toList()
                : other.train();
        return exchanged(own.train(), theirs, same, role);
    }

    private static RigSpec.TrainPart untold(RigSpec.TrainPart part) {
        OptionalDouble none = OptionalDouble.empty();
        return new RigSpec.TrainPart(part.name(), none, none, Optional.empty(), Optional.empty());
    }

    private static boolean has(RigSpec rig, PartRole role) {
        return rig.train().stream().anyMatch(p -> PartRole.of(p.name()).equals(role));
    }

    private static RigSpec numbers(RigSpec own, RigSpec other, PartRole.Kind kind) {
        RigSpec.Optics o = own.optics();
        RigSpec.Optics p = other.optics();
        return switch (kind) {
            case TELESCOPE ->
                p.focalLengthMm().isEmpty()
                        ? own
                        : own.with(new RigSpec.Optics(
                                p.apertureMm(), p.focalLengthMm(), o.reducer(), o.backFocusMm(), o.imageCircleMm()));
            case CORRECTOR ->
                p.reducer().isEmpty() && p.backFocusMm().isEmpty()
                        ? own
                        : own.with(new RigSpec.Optics(
                                o.apertureMm(), o.focalLengthMm(), p.reducer(), p.backFocusMm(), p.imageCircleMm()));
            case CAMERA -> other.camera().pixelUm().isEmpty() ? own : own.with(other.camera());
            case MOUNT -> other.mountCapacityKg().isEmpty() ? own : own.carriedBy(other.mountCapacityKg());
            case OTHER -> own;
        };
    }

    /**
     * A list of weights or prices with the other's in place of the own; absent where only one of the two names such a
     * part, or neither names one that every rig has.
     */
    public static <T> Optional<List<T>> listed(List<T> own, List<T> other, PartRole role, Function<T, String> name) {
        Predicate<T> same = part -> role.names(name.apply(part));
        boolean here = own.stream().anyMatch(same);
        boolean there = other.stream().anyMatch(same);
        boolean besides = role.kind() == PartRole.Kind.OTHER || role.kind() == PartRole.Kind.MOUNT;
        return here == there && (here || besides) ? Optional.of(exchanged(own, other, same, role)) : Optional.empty();
    }

    /** The other's parts of that role where the first of the own stood, else at the end that is theirs. */
    private static <T> List<T> exchanged(List<T> own, List<T> other, Predicate<T> same, PartRole role) {
        List<T> result = new ArrayList<>();
        int place = -1;
        for (T part : own) {
            if (!same.test(part)) {
                result.add(part);
            } else if (place < 0) {
                place = result.size();
            }
        }
        int end = role.equals(PartRole.CORRECTOR) ? 0 : result.size();
        result.addAll(place < 0 ? end : place, other.stream().filter(same).toList());
        return result;
    }
}
