package noctuary.site;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import noctuary.fact.Fact;
import noctuary.fact.Quantity;
import noctuary.site.page.FactRow;

/** Facts as printed. */
final class Facts {
    private final Origins origins;
    private final Discretion discretion;

    Facts(Address page, Discretion discretion) {
        this.origins = new Origins(page, discretion);
        this.discretion = discretion;
    }

    FactRow quantity(String id, String label, Fact<Quantity> fact) {
        return row(id, label, fact, Numerals::of);
    }

    <T> FactRow row(String id, String label, Fact<T> fact, Function<T, String> print) {
        if (fact instanceof Fact.Missing<T> missing) {
            return new FactRow(id, label, "", discretion.text(missing.why()), "", false, List.of());
        }
        Fact.Known<T> known = (Fact.Known<T>) fact;
        List<FactRow.Reading> readings = new ArrayList<>();
        readings.add(reading(known.reading(), print));
        known.disagreeing().forEach(other -> readings.add(reading(other, print)));
        String value = readings.get(0).value();
        String by = readings.get(0).origin().by();
        return new FactRow(id, label, value, "", by, readings.size() > 1, readings);
    }

    private <T> FactRow.Reading reading(Fact.Reading<T> reading, Function<T, String> print) {
        String value = discretion.text(print.apply(reading.value()));
        return new FactRow.Reading(value, origins.note(reading.origin()));
    }
}
