package noctuary.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import noctuary.fact.Fact;
import noctuary.fact.Origin;
import noctuary.fact.Origin.Derived;
import noctuary.fact.Origin.Input;
import noctuary.fact.Origin.Measured;
import noctuary.fact.Printed;
import noctuary.fact.Quantity;
import noctuary.fact.Unit;
import noctuary.stats.Robust;

/** One number of each file, and their median as that of the entry. */
final class Medians {
    private final List<FrameSheet> sources;

    Medians(List<FrameSheet> sources) {
        this.sources = sources;
    }

    Fact<Quantity> of(Figure figure, String method, Function<Measurement, Optional<Double>> part) {
        List<Input> inputs = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        for (FrameSheet source : sources) {
            part.apply(source.measurement()).filter(Double::isFinite).ifPresent(v -> {
                values.add(v);
                inputs.add(input(source, v, figure.unit(), method));
            });
        }
        if (values.isEmpty()) {
            return Fact.missing(sources.isEmpty() ? "there is no frame or stack to measure" : "no pixels to measure");
        }
        double median = Robust.median(values.stream().mapToDouble(v -> v).toArray());
        return Fact.of(Quantity.of(median, figure.unit()), origin(inputs, method));
    }

    static Origin origin(List<Input> inputs, String method) {
        if (inputs.size() == 1) {
            return inputs.get(0).origin();
        }
        return new Derived("median over " + inputs.size() + " frames", method, inputs);
    }

    static Input input(FrameSheet source, double value, Unit unit, String method) {
        return new Input(source.name(), Printed.of(value, unit), new Measured(source.name(), method));
    }
}
