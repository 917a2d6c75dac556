package noctuary.advice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import noctuary.fits.Cited;
import noctuary.fits.FrameHeader;
import noctuary.keep.Digest;
import noctuary.keep.Memo;
import noctuary.keep.Packing;
import noctuary.measure.FrameSheet;
import noctuary.stats.Robust;

/**
 * What an entry's files tell that bears on advice: all of it follows from the entry alone, so that other entries' advice
 * needs none of its files.
 *
 * @param lights that count as exposure
 * @param focus star width against temperature, one a night that tells it
 * @param celsius median temperature over lights and stack
 * @param focuser median temperature and position of the focuser, over lights that tell both
 * @param onSky arcsec a sensor pixel, of the first file whose header lies on the sky
 */
record EntryTraits(
        int lights,
        Optional<Sharpness> sharpness,
        Optional<Depth> depth,
        Optional<NoiseGrowth> growth,
        List<FocusNight> focus,
        OptionalDouble celsius,
        Optional<Focuser> focuser,
        OptionalDouble onSky) {
    static final EntryTraits NONE = new EntryTraits(
            0,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            OptionalDouble.empty(),
            Optional.empty(),
            OptionalDouble.empty());

    private static final Packing<EntryTraits> PACKING = Packing.of(EntryTraits.class);

    record Focuser(double celsius, double position) {}

    /** From {@code memo} where the entry is known to it. */
    static EntryTraits of(EntryContext entry, Memo memo) {
        String sheet = entry.sheet().key();
        String key = sheet.isEmpty()
                ? ""
                : new Digest()
                        .text(sheet)
                        .text(entry.noise().map(Object::toString).orElse(""))
                        .hex();
        return memo.recall("traits", PACKING, key, () -> of(entry));
    }

    private static EntryTraits of(EntryContext entry) {
        List<FrameSheet> lights = entry.lights();
        List<FrameHeader> headers = Stream.concat(lights.stream(), entry.sheet().stack().stream())
                .flatMap(f -> f.header().stream())
                .toList();
        return new EntryTraits(
                lights.size(),
                SharpnessReader.read(entry),
                Optional.of(DepthReader.read(entry)),
                NoiseGrowth.of(entry),
                entry.sheet().courses().stream()
                        .flatMap(course -> FocusNight.of(
                                entry.slug(), course, entry.sheet().frames())
                                .stream())
                        .toList(),
                median(headers.stream()
                        .flatMap(h -> FocusNight.temperature(h).stream())
                        .mapToDouble(c -> c)
                        .toArray()),
                focuser(lights),
                onSky(headers));
    }

    /** Of an entry whose files were looked at. */
    Depth known() {
        return depth.orElseThrow();
    }

    private static Optional<Focuser> focuser(List<FrameSheet> lights) {
        List<FrameHeader> told = lights.stream()
                .flatMap(f -> f.header().stream())
                .filter(h -> h.focuserPosition().isPresent()
                        && FocusNight.temperature(h).isPresent())
                .toList();
        OptionalDouble celsius = median(told.stream()
                .mapToDouble(h -> FocusNight.temperature(h).orElseThrow())
                .toArray());
        OptionalDouble position = median(told.stream()
                .mapToDouble(h -> h.focuserPosition().map(Cited::value).orElseThrow())
                .toArray());
        return told.isEmpty()
                ? Optional.empty()
                : Optional.of(new Focuser(celsius.getAsDouble(), position.getAsDouble()));
    }

    private static OptionalDouble onSky(List<FrameHeader> headers) {
        return headers.stream()
                .filter(h -> h.sky().isPresent())
                .mapToDouble(h -> h.sky().orElseThrow().value().arcsecPerPx() / h.binning())
                .findFirst();
    }

    private static OptionalDouble median(double[] values) {
        return values.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(Robust.median(values));
    }
}
