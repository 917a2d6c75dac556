package noctuary.entry;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import noctuary.fact.Quantity;

/**
 * A rig as the keeper wrote it. Numbers stand under the key's name, converted; plain factors and pixel counts have unit
 * NONE.
 *
 * @param optics aperture, focal length, back focus, image circle (mm), reducer (factor)
 * @param camera pixel (µm), width, height (pixels), read noise, full well (e), gain (e/ADU), temperature (°C)
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
        String html,
        List<Attachment> attachments) {
    public RigNote {
        optics = Collections.unmodifiableMap(new LinkedHashMap<>(optics));
        camera = Collections.unmodifiableMap(new LinkedHashMap<>(camera));
        attachments = List.copyOf(attachments);
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
        return PartsOn.date(train, date);
    }

    /** The payload as it was on a date, as {@link #trainOn}. */
    public List<Part> payloadOn(LocalDate date) {
        return PartsOn.date(payload, date);
    }

    /** Dates on which a part of train or payload changed, ascending. */
    public List<LocalDate> partChanges() {
        return Stream.concat(train.stream(), payload.stream())
                .flatMap(part -> part.since().stream())
                .distinct()
                .sorted()
                .toList();
    }
}
