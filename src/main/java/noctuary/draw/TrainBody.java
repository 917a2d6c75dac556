package noctuary.draw;

import noctuary.draw.TrainLayout.Kind;
import noctuary.draw.TrainLayout.Placed;

/** The parts of a train about the optical axis, its sensor, and the rays that meet where the sensor is wanted. */
final class TrainBody {
    private static final double GLASS_SHARE = 0.86;
    private static final double RAY_SHARE = 0.62;

    private final Svg svg;
    private final TrainDrawing train;
    private final TrainLayout layout;
    private final TrainScale scale;
    private final double axis;

    TrainBody(Svg svg, TrainDrawing train, TrainLayout layout, TrainScale scale, double axis) {
        this.svg = svg;
        this.train = train;
        this.layout = layout;
        this.scale = scale;
        this.axis = axis;
    }

    void draw() {
        layout.placed().forEach(this::part);
        sensor();
        rays();
        svg.line("optical", scale.zero() - scale.stub(), axis, scale.x(layout.endMm()) + scale.body(), axis);
    }

    private void part(Placed placed) {
        double half = scale.half(placed.diameterMm());
        double left = scale.x(placed.fromMm());
        double width = scale.x(placed.toMm()) - left;
        svg.open("g", "class", "point");
        svg.tip(placed.part().name());
        if (placed.kind() == Kind.STUB) {
            svg.path("part", bracket(left - scale.stub(), left, half));
        } else if (placed.kind() == Kind.GLASS) {
            glass(left, width, half);
        } else {
            boolean sure = placed.part().hasDiameter() && placed.kind() == Kind.BLOCK;
            svg.rect(sure ? "part" : "part unsure", left, axis - half, width, 2 * half);
            if (placed.part().hasGlass()) {
                double glass = placed.part().glassMm() * scale.perMm();
                glass(left + (width - glass) / 2, glass, half);
            }
        }
        svg.close();
    }

    private void glass(double left, double width, double half) {
        double high = GLASS_SHARE * half;
        svg.patterned("pane", "glass", left, axis - high, Math.max(width, 2), 2 * high);
    }

    /** Three sides of a block, the far end left open. */
    private Trace bracket(double open, double closed, double half) {
        return new Trace()
                .move(open, axis - half)
                .line(closed, axis - half)
                .line(closed, axis + half)
                .line(open, axis + half);
    }

    private void sensor() {
        double at = scale.x(layout.endMm());
        double half = scale.half(layout.placed().get(layout.placed().size() - 1).diameterMm());
        svg.path("part", bracket(at + scale.body(), at, half));
        if (Digits.isPositive(train.sensorDiagonalMm())) {
            double reach = Math.min(train.sensorDiagonalMm() / 2 * scale.perMm(), half);
            svg.line("sensor", at, axis - reach, at, axis + reach);
        }
    }

    private void rays() {
        if (train.hasRequired()) {
            double wide = RAY_SHARE * scale.half(layout.placed().get(0).diameterMm());
            double focus = scale.x(train.requiredMm());
            svg.line("ray", scale.zero(), axis - wide, focus, axis);
            svg.line("ray", scale.zero(), axis + wide, focus, axis);
        }
    }

    void misfits() {
        train.joints().stream()
                .filter(joint -> joint.mate() == TrainDrawing.Mate.MISFIT)
                .forEach(this::misfit);
    }

    private void misfit(TrainDrawing.Joint joint) {
        double half = scale.half(layout.placed().get(joint.after()).diameterMm());
        double at = scale.x(layout.jointMm(joint.after()));
        svg.open("g", "class", "point");
        svg.tip(joint.text() + " will not mate");
        svg.line("bad misfit", at, axis - half - 6, at, axis + half + 6);
        Symbol.SALTIRE.draw(svg, "bad misfit", at, axis + half + 1, 5);
        Symbol.SALTIRE.draw(svg, "bad misfit", at, axis - half - 1, 5);
        svg.close();
    }
}
