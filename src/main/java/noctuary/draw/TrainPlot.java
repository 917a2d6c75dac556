package noctuary.draw;

import java.util.List;
import noctuary.draw.TrainLayout.Kind;
import noctuary.draw.TrainLayout.Placed;

/** The drawing of a {@link TrainDrawing}. */
final class TrainPlot {
    private static final double ROW = 18;
    private static final double WALL_MM = 2;

    private final TrainDrawing train;
    private final Form form;
    private final TrainLayout layout;
    private final double scale;
    private final double zero;

    TrainPlot(TrainDrawing train, Form form) {
        this.train = train;
        this.form = form;
        this.layout = new TrainLayout(train.parts());
        double stub = form.pick(74, 46);
        double body = form.pick(44, 30);
        double required = train.hasRequired() ? train.requiredMm() : 0;
        double reach = Math.max(Math.max(layout.endMm(), required), 1);
        double tall = layout.widestMm() + 2 * WALL_MM;
        this.scale = Math.min((form.width() - stub - body - 12) / reach, form.pick(270, 200) / tall);
        this.zero = (form.width() - reach * scale - stub - body) / 2 + stub;
    }

    String draw(Alternative words) {
        if (train.parts().isEmpty()) {
            Svg svg = Svg.picture(words, "train", form, 60);
            Axes.nothing(svg, form, 34, "no parts written");
            return svg.end();
        }
        TrainLabels names = names();
        TrainLabels threads = threads();
        double high = (layout.widestMm() + 2 * WALL_MM) * scale;
        double top = names.height() + 14;
        double axis = top + high / 2;
        double below = top + high;
        double measures = below + threads.height() + 20;
        Svg svg = Svg.picture(words, "train", form, measures + 92);
        svg.open("defs");
        Texture.HATCH.define(svg, svg.idOf("glass"), "glass");
        svg.close();
        layout.placed().forEach(part -> part(svg, part, axis));
        sensor(svg, axis);
        light(svg, axis);
        names.draw(svg, top - 6, false);
        threads.draw(svg, below + 4, true);
        train.joints().stream()
                .filter(joint -> joint.mate() == TrainDrawing.Mate.MISFIT)
                .forEach(joint -> misfit(svg, joint, axis));
        new TrainMeasures(train, form, zero, scale).draw(svg, measures);
        return svg.end();
    }

    private double x(double mm) {
        return zero + mm * scale;
    }

    private double half(double diameterMm) {
        return (diameterMm / 2 + WALL_MM) * scale;
    }

    private TrainLabels names() {
        TrainLabels labels = new TrainLabels(form);
        for (Placed placed : layout.placed()) {
            TrainDrawing.Part part = placed.part();
            String size = placed.kind() == Kind.GLASS
                    ? " " + Digits.fixed(part.glassMm(), 1) + " mm glass"
                    : part.hasLength() ? " " + Digits.fixed(part.lengthMm(), 1) + " mm" : "";
            String unknown = placed.kind() == Kind.UNKNOWN ? ", length not written" : "";
            double at = placed.kind() == Kind.STUB ? zero - form.pick(38, 24) : x(placed.middleMm());
            labels.add(at, part.name() + size + unknown, "label");
        }
        return labels;
    }

    private TrainLabels threads() {
        TrainLabels labels = new TrainLabels(form);
        train.joints().stream().filter(joint -> !joint.text().isEmpty()).forEach(joint -> {
            boolean misfit = joint.mate() == TrainDrawing.Mate.MISFIT;
            String text = misfit ? joint.text() + " will not mate" : joint.text();
            labels.add(x(layout.jointMm(joint.after())), text, misfit ? "label bad" : "note");
        });
        return labels;
    }

    private void part(Svg svg, Placed placed, double axis) {
        double half = half(placed.diameterMm());
        double left = x(placed.fromMm());
        double width = (placed.toMm() - placed.fromMm()) * scale;
        boolean sure = placed.part().hasDiameter() && placed.kind() != Kind.UNKNOWN;
        svg.open("g", "class", "point");
        svg.tip(placed.part().name());
        switch (placed.kind()) {
            case STUB -> stub(svg, left, axis, half);
            case GLASS -> glass(svg, left, width, axis, half);
            default -> {
                svg.rect(sure ? "part" : "part unsure", left, axis - half, width, 2 * half);
                if (placed.part().hasGlass()) {
                    double glass = placed.part().glassMm() * scale;
                    glass(svg, left + (width - glass) / 2, glass, axis, half);
                }
            }
        }
        svg.close();
    }

    /** The corrector's rear end, its front left open. */
    private void stub(Svg svg, double right, double axis, double half) {
        double left = right - form.pick(70, 42);
        svg.path(
                "part",
                new Trace()
                        .move(left, axis - half)
                        .line(right, axis - half)
                        .line(right, axis + half)
                        .line(left, axis + half));
    }

    private void glass(Svg svg, double left, double width, double axis, double half) {
        double high = 0.86 * half;
        String fill = "url(#" + svg.idOf("glass") + ")";
        List<Object> attributes = List.of(
                "class",
                "pane",
                "x",
                left,
                "y",
                axis - high,
                "width",
                Math.max(width, 2),
                "height",
                2 * high,
                "fill",
                fill);
        svg.leaf("rect", attributes.toArray());
    }

    private void sensor(Svg svg, double axis) {
        double at = x(layout.endMm());
        double half = half(layout.placed().get(layout.placed().size() - 1).diameterMm());
        double body = form.pick(40, 26);
        svg.path(
                "part",
                new Trace()
                        .move(at, axis - half)
                        .line(at + body, axis - half)
                        .line(at + body, axis + half)
                        .line(at, axis + half));
        svg.line("sensor", at, axis - 0.5 * half, at, axis + 0.5 * half);
        svg.line("optical", zero - form.pick(70, 42), axis, at + body, axis);
    }

    /** Rays meeting where the sensor is wanted. */
    private void light(Svg svg, double axis) {
        if (train.hasRequired()) {
            double wide = 0.62 * half(layout.placed().get(0).diameterMm());
            double focus = x(train.requiredMm());
            svg.line("ray", zero, axis - wide, focus, axis);
            svg.line("ray", zero, axis + wide, focus, axis);
        }
    }

    private void misfit(Svg svg, TrainDrawing.Joint joint, double axis) {
        double half = half(layout.placed().get(joint.after()).diameterMm());
        double at = x(layout.jointMm(joint.after()));
        svg.open("g", "class", "point");
        svg.tip(joint.text() + " will not mate");
        svg.line("bad misfit", at, axis - half - 6, at, axis + half + 6);
        Symbol.SALTIRE.draw(svg, "bad misfit", at, axis + half + 1, 5);
        Symbol.SALTIRE.draw(svg, "bad misfit", at, axis - half - 1, 5);
        svg.close();
    }
}
