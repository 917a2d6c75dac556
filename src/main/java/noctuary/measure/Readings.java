package noctuary.measure;

import java.util.List;
import noctuary.fact.Fact;
import noctuary.fact.Fact.Reading;
import noctuary.fact.Origin.Derived;
import noctuary.fact.Origin.Header;
import noctuary.fact.Origin.Input;
import noctuary.fact.Printed;
import noctuary.fact.Quantity;
import noctuary.fact.Unit;
import noctuary.fits.Cited;

/** Short ways to say where a number comes from. */
final class Readings {
    private Readings() {}

    /** A value that stands on a card of {@code file}. */
    static Reading<Quantity> cited(FrameSheet file, Cited<?> card, double value, Unit unit) {
        return new Reading<>(Quantity.of(value, unit), new Header(file.name(), card.card(), card.text()));
    }

    static Reading<Quantity> cited(FrameSheet file, Cited<Double> card, Unit unit) {
        return cited(file, card, card.value(), unit);
    }

    static Reading<Quantity> derived(double value, Unit unit, String formula, String method, Input... inputs) {
        return new Reading<>(Quantity.of(value, unit), new Derived(formula, method, List.of(inputs)));
    }

    static Input input(String name, Reading<Quantity> reading) {
        return new Input(name, Printed.of(reading.value()), reading.origin());
    }

    static Fact<Quantity> known(Reading<Quantity> reading) {
        return new Fact.Known<>(reading, List.of());
    }
}
