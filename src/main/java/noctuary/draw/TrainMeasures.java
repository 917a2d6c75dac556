package noctuary.draw;

/** The distances below a train as dimension lines: what is wanted, what there is, and the difference. */
final class TrainMeasures {
    private static final double LINE = 30;

    private final TrainDrawing train;
    private final Form form;
    private final TrainScale scale;

    TrainMeasures(TrainDrawing train, Form form, TrainScale scale) {
        this.train = train;
        this.form = form;
        this.scale = scale;
    }

    double height() {
        return 30 + lines() * LINE;
    }

    void draw(Svg svg, double top) {
        double y = top + 8;
        if (train.hasRequired()) {
            dimension(svg, "required", train.requiredMm(), y);
            y += LINE;
        }
        if (train.hasActual()) {
            dimension(svg, "actual", train.actualMm(), y);
            y += LINE;
        }
        double at = form.width() / 2;
        if (lines() == 2) {
            difference(svg, top);
            at = scale.x(train.actualMm());
        }
        double half = Words.width(train.difference(), form.fontSize()) / 2 + 6;
        double middle = Math.max(half, Math.min(at, form.width() - half));
        svg.text("label strong" + tone(), Anchor.MIDDLE, middle, y + 2, train.difference());
    }

    private int lines() {
        return (train.hasRequired() ? 1 : 0) + (train.hasActual() ? 1 : 0);
    }

    private void difference(Svg svg, double top) {
        double from = scale.x(Math.min(train.requiredMm(), train.actualMm()));
        double width = Math.abs(train.requiredMm() - train.actualMm()) * scale.perMm();
        svg.rect("difference" + tone(), from, top, Math.max(width, 1), LINE + 16);
    }

    private String tone() {
        if (lines() < 2 || Double.isNaN(train.toleranceMm())) {
            return "";
        }
        return train.isWithin() ? " good" : " bad";
    }

    private void dimension(Svg svg, String name, double lengthMm, double y) {
        double zero = scale.zero();
        double end = scale.x(lengthMm);
        svg.line("dimension", zero, y, end, y);
        svg.path("arrow", head(zero, y, 7));
        svg.path("arrow", head(end, y, -7));
        svg.line("axis", zero, y - 7, zero, y + 7);
        svg.line("axis", end, y - 7, end, y + 7);
        String text = name + " " + Digits.fixed(lengthMm, 2) + " mm";
        svg.plated("label", Anchor.MIDDLE, (zero + end) / 2, y + 5, text);
    }

    private static Trace head(double x, double y, double length) {
        return new Trace()
                .move(x, y)
                .line(x + length, y - 3)
                .line(x + length, y + 3)
                .shut();
    }
}
