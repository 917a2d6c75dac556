package noctuary.draw;

import java.util.ArrayList;
import java.util.List;

/** Where the parts of a train lie along the axis, in millimetres from the corrector's rear. */
final class TrainLayout {
    /** Drawn for a part whose length nobody wrote. */
    private static final double STAND_IN_MM = 12;

    private static final double USUAL_DIAMETER_MM = 48;

    enum Kind {
        /** The corrector, of which only the rear end matters. */
        STUB,
        /** Glass that adds no length of its own. */
        GLASS,
        BLOCK,
        UNKNOWN
    }

    record Placed(TrainDrawing.Part part, Kind kind, double fromMm, double toMm, double diameterMm) {
        double middleMm() {
            return (fromMm + toMm) / 2;
        }
    }

    private final List<Placed> placed = new ArrayList<>();
    private final double endMm;

    TrainLayout(List<TrainDrawing.Part> parts) {
        double at = 0;
        double diameter = parts.stream()
                .filter(TrainDrawing.Part::hasDiameter)
                .mapToDouble(TrainDrawing.Part::diameterMm)
                .findFirst()
                .orElse(USUAL_DIAMETER_MM);
        for (int i = 0; i < parts.size(); i++) {
            TrainDrawing.Part part = parts.get(i);
            diameter = part.hasDiameter() ? part.diameterMm() : diameter;
            Kind kind = kind(part, i == 0);
            double before = kind == Kind.GLASS ? Math.min(part.glassMm(), at) : 0;
            double length = length(part, kind);
            placed.add(new Placed(part, kind, at - before, at - before + length, diameter));
            at += kind == Kind.GLASS ? 0 : length;
        }
        this.endMm = at;
    }

    private static Kind kind(TrainDrawing.Part part, boolean first) {
        if (part.hasLength()) {
            return Kind.BLOCK;
        }
        if (first) {
            return Kind.STUB;
        }
        return part.hasGlass() ? Kind.GLASS : Kind.UNKNOWN;
    }

    private static double length(TrainDrawing.Part part, Kind kind) {
        return switch (kind) {
            case BLOCK -> part.lengthMm();
            case STUB -> 0;
            case GLASS -> part.glassMm();
            case UNKNOWN -> STAND_IN_MM;
        };
    }

    List<Placed> placed() {
        return List.copyOf(placed);
    }

    /** The sensor. */
    double endMm() {
        return endMm;
    }

    double widestMm() {
        return placed.stream().mapToDouble(Placed::diameterMm).max().orElse(USUAL_DIAMETER_MM);
    }

    /** Where the part ends that a joint comes after. */
    double jointMm(int after) {
        return placed.get(after).toMm();
    }
}
