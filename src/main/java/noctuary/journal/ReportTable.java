package noctuary.journal;

import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.fact.Printed;
import noctuary.measure.FrameReport;
import noctuary.measure.FrameReport.Spread;

/** A report as lines of a label and a value, for a terminal. */
final class ReportTable {
    private static final int LABEL_WIDTH = 22;

    private final StringBuilder lines = new StringBuilder();

    private ReportTable() {}

    static String of(FrameReport r) {
        ReportTable table = new ReportTable();
        table.lines.append(r.file()).append('\n');
        table.image(r);
        table.stars(r);
        table.pixels(r);
        r.problems()
                .forEach(p -> table.line(
                        p.where().isEmpty() ? "problem" : p.where(),
                        p.hint().isEmpty() ? p.what() : p.what() + "; " + p.hint()));
        return table.lines.toString();
    }

    private void image(FrameReport r) {
        if (r.width().isEmpty()) {
            return;
        }
        String planes = r.planes().orElse(1) > 1 ? ", " + r.planes().getAsInt() + " planes" : "";
        line(
                r.kind().word(),
                r.width().getAsInt() + " × " + r.height().orElse(0) + " px" + planes
                        + r.mosaic().map(m -> ", mosaic " + m).orElse(""));
        text("object", r.object());
        text("taken (UTC)", r.taken().map(Object::toString));
        String times = r.exposures().orElse(1) > 1 ? " in " + r.exposures().getAsInt() + " exposures" : "";
        value("exposure", r.exposureSeconds(), " s" + times);
        text("filter", r.filter());
        value("gain", r.gain(), " e/ADU");
        value("sensor temperature", r.sensorTemperatureC(), " °C");
        text("image scale", r.imageScale().map(s -> Printed.number(s.arcsecPerPx()) + " arcsec/px, from " + s.from()));
        text("field", r.field().map(f -> Printed.number(f.widthDeg()) + "° × " + Printed.number(f.heightDeg()) + "°"));
    }

    private void stars(FrameReport r) {
        r.stars().ifPresent(s -> {
            line("stars", s.found() + " found, " + s.measured() + " measured, " + s.saturated() + " saturated");
            spread("FWHM", s.fwhmPx(), " px");
            spread("FWHM", s.fwhmArcsec(), " arcsec");
            spread("ellipticity", s.ellipticity(), "");
            spread("half-flux radius", s.halfFluxRadiusPx(), " px");
            value("Moffat β", s.moffatBeta().median(), "");
        });
    }

    private void pixels(FrameReport r) {
        r.background().ifPresent(b -> {
            line("background", Printed.number(b.level()) + " ADU, noise " + Printed.number(b.noise()) + " ADU");
            value("background gradient", b.gradientPercent(), " %");
        });
        r.defects().ifPresent(d -> {
            value("hot pixels", d.hotPixels(), "");
            value("row banding", d.rowBanding(), " ADU");
            value("column banding", d.columnBanding(), " ADU");
            value("drift streaks", d.driftStreak(), " of the noise");
            value("clipped black", d.clippedBlackPercent(), " %");
            value("clipped white", d.clippedWhitePercent(), " %");
        });
    }

    private void spread(String label, Spread spread, String unit) {
        if (spread.median().isPresent()) {
            line(
                    label,
                    Printed.number(spread.median().getAsDouble()) + unit + " ("
                            + Printed.number(spread.low().orElseThrow()) + " to "
                            + Printed.number(spread.high().orElseThrow()) + ")");
        }
    }

    private void value(String label, OptionalDouble value, String unit) {
        value.ifPresent(v -> line(label, Printed.number(v) + unit));
    }

    private void text(String label, Optional<String> text) {
        text.ifPresent(t -> line(label, t));
    }

    private void line(String label, String value) {
        String padded = label + " ".repeat(Math.max(1, LABEL_WIDTH - label.length()));
        lines.append("  ").append(padded).append(value.strip()).append('\n');
    }
}
