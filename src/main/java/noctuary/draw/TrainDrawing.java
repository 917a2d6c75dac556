package noctuary.draw;

import java.util.ArrayList;
import java.util.List;

/**
 * The train from the corrector to the sensor, to scale from the side, with the distance there is and the distance that
 * is wanted.
 *
 * @param parts from the corrector on; the last ends at the sensor
 * @param joints where two parts meet; those not told are drawn without words
 * @param requiredMm wanted from the corrector to the sensor; NaN when not known
 * @param actualMm the sum of the lengths; NaN when one is not known
 * @param toleranceMm how far off is still good; NaN when not known
 * @param sensorDiagonalMm NaN when not known
 */
public record TrainDrawing(
        String title,
        List<Part> parts,
        List<Joint> joints,
        double requiredMm,
        double actualMm,
        double toleranceMm,
        double sensorDiagonalMm)
        implements Chart {
    public TrainDrawing {
        parts = List.copyOf(parts);
        joints = List.copyOf(joints);
        for (Joint joint : joints) {
            if (joint.after() < 0 || joint.after() >= parts.size() - 1) {
                throw new IllegalArgumentException("no joint after part " + joint.after() + " of " + parts.size());
            }
        }
    }

    /**
     * @param lengthMm NaN when not written; the first part may have none, being measured from its rear
     * @param glassMm thickness of filter glass inside; 0 for none
     * @param diameterMm of its larger thread; NaN when not known
     */
    public record Part(String name, double lengthMm, double glassMm, double diameterMm) {
        boolean hasLength() {
            return Digits.isPositive(lengthMm);
        }

        boolean hasGlass() {
            return Digits.isPositive(glassMm);
        }

        boolean hasDiameter() {
            return Digits.isPositive(diameterMm);
        }
    }

    public enum Mate {
        FITS,
        MISFIT,
        UNKNOWN
    }

    /**
     * @param after index of the part in front of the joint
     * @param text the thread, or both where they differ
     */
    public record Joint(int after, String text, Mate mate) {}

    boolean hasRequired() {
        return Digits.isPositive(requiredMm);
    }

    boolean hasActual() {
        return Digits.isPositive(actualMm);
    }

    /** Whether the difference lies within the tolerance; nothing is claimed without one. */
    boolean isWithin() {
        return Math.abs(actualMm - requiredMm) <= toleranceMm;
    }

    /** Such as {@code 0.7 mm too short}, or why there is no number. */
    String difference() {
        if (!hasRequired()) {
            return "required distance not known";
        }
        if (!hasActual()) {
            return "a length is missing";
        }
        double rounded = Math.round((actualMm - requiredMm) * 100) / 100.0;
        if (rounded == 0) {
            return "as required";
        }
        String size = Digits.fixed(Math.abs(rounded), 2) + " mm " + (rounded < 0 ? "too short" : "too long");
        return isWithin() ? size + ", within ± " + Digits.fixed(toleranceMm, 2) + " mm" : size;
    }

    @Override
    public String svg(String id, Form form) {
        return new TrainPlot(this, form).draw(new Alternative(id, title, description()));
    }

    private String description() {
        if (parts.isEmpty()) {
            return "No parts written.";
        }
        List<String> words = new ArrayList<>();
        for (Part part : parts) {
            words.add(part.name()
                    + (part.hasLength() ? " " + Digits.fixed(part.lengthMm(), 1) + " mm" : "")
                    + (part.hasGlass() ? ", glass " + Digits.fixed(part.glassMm(), 1) + " mm" : ""));
        }
        StringBuilder text = new StringBuilder("From the corrector to the sensor: " + String.join("; ", words) + ".");
        if (hasRequired()) {
            text.append(" Required ").append(Digits.fixed(requiredMm, 2)).append(" mm.");
        }
        if (hasActual()) {
            text.append(" Actual ").append(Digits.fixed(actualMm, 2)).append(" mm.");
        }
        text.append(" Result: ").append(difference()).append('.');
        joints.stream()
                .filter(j -> j.mate() == Mate.MISFIT)
                .forEach(j -> text.append(" Will not mate: ").append(j.text()).append('.'));
        return text.toString();
    }
}
