package noctuary.entry;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import noctuary.fact.Quantity;

/**
 * A rig as the keeper wrote it. Numbers stand under the key's name ("aperture", "focal length", "pixel", ...), converted
 * to mm, µm, kg, e; plain factors and pixel counts have unit NONE.
 *
 * @param html the body as HTML that cannot run anything
 */
public record RigNote(
        String id,
        String file,
        Typed<String> name,
        Optional<LocalDate> from,
        Optional<LocalDate> to,
        Map<String, Typed<Quantity>> optics,
        Map<String, Typed<Quantity>> camera,
        Optional<Typed<String>> mosaic,
        List<Part> train,
        Optional<String> mountName,
        Optional<Typed<Quantity>> mountCapacity,
        List<Part> payload,
        List<Price> cost,
        String html) {
    public RigNote {
        optics = Map.copyOf(optics);
        camera = Map.copyOf(camera);
        train = List.copyOf(train);
        payload = List.copyOf(payload);
        cost = List.copyOf(cost);
    }

    /** A part of train or payload; {@code since} marks a part that replaced its namesake on that date. */
    public record Part(
            String name,
            Optional<LocalDate> since,
            Optional<Typed<Quantity>> length,
            Optional<Typed<Quantity>> glass,
            Optional<Typed<Quantity>> mass,
            Optional<Typed<String>> front,
            Optional<Typed<String>> rear) {}

    /** @param currency ISO 4217 code */
    public record Price(String part, BigDecimal amount, String currency) {}

    /** The train as it was on a date: each part once, in order, the latest replacement in its namesake's place. */
    public List<Part> trainOn(LocalDate date) {
        throw new UnsupportedOperationException("not built yet: " + date);
    }

    /** Dates on which a part changed, ascending. */
    public List<LocalDate> partChanges() {
        throw new UnsupportedOperationException("not built yet");
    }
}
