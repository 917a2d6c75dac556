package noctuary.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import noctuary.fact.Fact;
import noctuary.fact.Fact.Reading;
import noctuary.fact.Origin.Derived;
import noctuary.fact.Origin.Input;
import noctuary.fact.Quantity;
import noctuary.fact.Unit;
import noctuary.fits.Cited;
import noctuary.fits.FrameHeader;
import noctuary.stats.Robust;

/** Gain and sensor temperature of an entry. */
final class CameraFigures {
    private CameraFigures() {}

    static Voices gain(List<FrameSheet> files, Optional<RigContext> rig) {
        Optional<Reading<Quantity>> header = files.stream()
                .flatMap(f -> card(f, f.header().flatMap(FrameHeader::electronsPerAdu), Unit.ELECTRON_PER_ADU).stream())
                .findFirst();
        return new Voices("gain").hear("the header", header).hear("the rig", rig.flatMap(r -> r.camera("gain")));
    }

    /** Median over the files that tell it; a set point is not a measurement. */
    static Fact<Quantity> temperature(List<FrameSheet> files) {
        List<Reading<Quantity>> told = new ArrayList<>();
        List<Input> inputs = new ArrayList<>();
        for (FrameSheet file : files) {
            card(file, file.header().flatMap(FrameHeader::sensorTemperatureC), Unit.CELSIUS)
                    .ifPresent(reading -> {
                        told.add(reading);
                        inputs.add(Readings.input(file.name(), reading));
                    });
        }
        if (told.isEmpty()) {
            return Fact.missing("no header tells a measured temperature");
        }
        if (told.size() == 1) {
            return Readings.known(told.get(0));
        }
        double median =
                Robust.median(told.stream().mapToDouble(r -> r.value().value()).toArray());
        return Fact.of(
                Quantity.of(median, Unit.CELSIUS),
                new Derived("median over " + told.size() + " files", "sensor-temperature", inputs));
    }

    private static Optional<Reading<Quantity>> card(FrameSheet file, Optional<Cited<Double>> card, Unit unit) {
        return card.map(c -> Readings.cited(file, c, unit));
    }
}
