package noctuary.draw;

/** The distances below a train as dimension lines: what is wanted, what there is, and the difference. */
final class TrainMeasures {
    private final TrainDrawing train;
    private final Form form;
    private final double zero;
    private final double scale;

    TrainMeasures(TrainDrawing train, Form form, double zero, double scale) {
        this.train = train;
        this.form = form;
        this.zero = zero;
        this.scale = scale;
    }

    void draw(Svg svg, double top) {
        if (train.hasRequired()) {
            dimension(svg, "required", train.requiredMm(), top + 8);
        }
        if (train.hasActual()) {
            dimension(svg, "there is", train.actualMm(), top + 38);
        }
        boolean judged = train.hasRequired() && train.hasActual();
        String tone = !judged || Double.isNaN(train.toleranceMm()) ? "" : train.isWithin() ? " good" : " bad";
        if (judged) {
            double from = zero + Math.min(train.requiredMm(), train.actualMm()) * scale;
            double width = Math.abs(train.requiredMm() - train.actualMm()) * scale;
            svg.rect("difference" + tone, from, top, Math.max(width, 1), 46);
        }
        double at = judged ? zero + train.actualMm() * scale : form.width() / 2;
        double half = Words.width(train.difference(), form.fontSize()) / 2;
        double middle = Math.max(half + 4, Math.min(at, form.width() - half - 4));
        svg.text("label strong" + tone, Anchor.MIDDLE, middle, top + 66, train.difference());
    }

    private void dimension(Svg svg, String name, double lengthMm, double y) {
        double end = zero + lengthMm * scale;
        svg.line("dimension", zero, y, end, y);
        svg.path("arrow", head(zero, y, 7));
        svg.path("arrow", head(end, y, -7));
        svg.line("axis", zero, y - 7, zero, y + 7);
        svg.line("axis", end, y - 7, end, y + 7);
        String text = name + " " + Digits.fixed(lengthMm, 2) + " mm";
        svg.text("label halo", Anchor.MIDDLE, (zero + end) / 2, y + 5, text);
    }

    private static Trace head(double x, double y, double length) {
        return new Trace()
                .move(x, y)
                .line(x + length, y - 3)
                .line(x + length, y + 3)
                .shut();
    }
}
