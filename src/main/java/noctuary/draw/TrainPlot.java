package noctuary.draw;

import noctuary.draw.TrainLayout.Kind;
import noctuary.draw.TrainLayout.Placed;

/** The drawing of a {@link TrainDrawing}. */
final class TrainPlot {
    private final TrainDrawing train;
    private final Form form;
    private final TrainLayout layout;
    private final TrainScale scale;

    TrainPlot(TrainDrawing train, Form form) {
        this.train = train;
        this.form = form;
        this.layout = new TrainLayout(train.parts());
        double required = train.hasRequired() ? train.requiredMm() : 0;
        double reach = Math.max(Math.max(layout.endMm(), required), 1);
        this.scale = TrainScale.of(form, reach, layout.widestMm());
    }

    String draw(Alternative words) {
        if (train.parts().isEmpty()) {
            Svg svg = Svg.picture(words, "train", form, 60);
            Axes.nothing(svg, form, 34, "no parts written");
            return svg.end();
        }
        TrainLabels names = names();
        TrainLabels threads = threads();
        double high = 2 * scale.half(layout.widestMm());
        double top = names.height() + 14;
        double axis = top + high / 2;
        double below = top + high;
        double measures = below + threads.height() + 20;
        TrainMeasures distances = new TrainMeasures(train, form, scale);
        Svg svg = Svg.picture(words, "train", form, measures + distances.height());
        svg.open("defs");
        Texture.HATCH.define(svg, svg.idOf("glass"), "glass");
        svg.close();
        TrainBody body = new TrainBody(svg, train, layout, scale, axis);
        body.draw();
        names.draw(svg, top - 6, false);
        threads.draw(svg, below + 4, true);
        body.misfits();
        distances.draw(svg, measures);
        return svg.end();
    }

    private TrainLabels names() {
        TrainLabels labels = new TrainLabels(form);
        for (Placed placed : layout.placed()) {
            TrainDrawing.Part part = placed.part();
            String size = placed.kind() == Kind.GLASS
                    ? " " + Digits.fixed(part.glassMm(), 1) + " mm glass"
                    : part.hasLength() ? " " + Digits.fixed(part.lengthMm(), 1) + " mm" : "";
            String unknown = placed.kind() == Kind.UNKNOWN ? ", length not written" : "";
            double at = placed.kind() == Kind.STUB ? scale.x(0) - scale.stub() / 2 : scale.x(placed.middleMm());
            labels.add(at, part.name() + size + unknown, "label");
        }
        return labels;
    }

    private TrainLabels threads() {
        TrainLabels labels = new TrainLabels(form);
        train.joints().stream().filter(joint -> !joint.text().isEmpty()).forEach(joint -> {
            boolean misfit = joint.mate() == TrainDrawing.Mate.MISFIT;
            String text = misfit ? joint.text() + " will not mate" : joint.text();
            labels.add(scale.x(layout.jointMm(joint.after())), text, misfit ? "label bad" : "note");
        });
        return labels;
    }
}
