package noctuary.measure;

import static noctuary.measure.Readings.cited;
import static noctuary.measure.Readings.derived;
import static noctuary.measure.Readings.input;

import java.util.Optional;
import java.util.function.Function;
import noctuary.fact.Fact.Reading;
import noctuary.fact.Quantity;
import noctuary.fact.Unit;
import noctuary.fits.Cited;
import noctuary.fits.FrameHeader;

/** What sky, header and rig say about scale, focal length, pitch and focal ratio, in that order of trust. */
final class OpticsVoices {
    private static final String SKY = "the sky";
    private static final String HEADER = "the header";
    private static final String RIG = "the rig";

    private final Optional<OpticsSource> source;
    private final Optional<RigContext> rig;
    private final int binning;
    private final Optional<Reading<Quantity>> skyScale;
    private final Optional<Reading<Quantity>> headerFocal;
    private final Optional<PixelPitch.Answer> pitch;

    OpticsVoices(Optional<OpticsSource> source, Optional<RigContext> rig) {
        this.source = source;
        this.rig = rig;
        this.binning = source.flatMap(s -> s.optics().header())
                .map(FrameHeader::binning)
                .orElse(1);
        this.skyScale = source.flatMap(s -> s.sky()
                .header()
                .flatMap(FrameHeader::sky)
                .map(c -> cited(s.sky(), c, c.value().arcsecPerPx(), Unit.ARCSECOND_PER_PIXEL)));
        this.headerFocal = card(FrameHeader::focalLengthMm);
        this.pitch = source.flatMap(s -> PixelPitch.of(s.optics(), expectedPitch()));
    }

    boolean pitchDoubtful() {
        return pitch.filter(PixelPitch.Answer::doubtful).isPresent();
    }

    Voices scale() {
        Optional<Reading<Quantity>> header = headerPitch()
                .flatMap(p -> headerFocal.map(f -> derived(
                        HeaderOptics.ARCSEC_UM_PER_MM * value(p) / value(f),
                        Unit.ARCSECOND_PER_PIXEL,
                        "206.265 p / f",
                        "image-scale",
                        input("p", p),
                        input("f", f))));
        return new Voices("image scale")
                .hear(SKY, skyScale)
                .hear(HEADER, header)
                .hear(RIG, rig.flatMap(r -> r.imageScale(binning)));
    }

    Voices focalLength() {
        Optional<Reading<Quantity>> sky = skyScale.flatMap(s -> headerPitch()
                .or(this::rigPitch)
                .map(p -> derived(
                        HeaderOptics.ARCSEC_UM_PER_MM * value(p) / value(s),
                        Unit.MILLIMETRE,
                        "206.265 p / scale",
                        "focal-length",
                        input("p", p),
                        input("scale", s))));
        return new Voices("focal length")
                .hear(SKY, sky)
                .hear(HEADER, headerFocal)
                .hear(RIG, rig.flatMap(RigContext::focalLength));
    }

    Voices pitch() {
        return new Voices("pixel pitch").hear(HEADER, headerPitch()).hear(RIG, rigPitch());
    }

    Voices focalRatio() {
        Optional<Reading<Quantity>> header = headerFocal.flatMap(f -> card(FrameHeader::apertureMm)
                .map(d ->
                        derived(value(f) / value(d), Unit.NONE, "f / D", "focal-ratio", input("f", f), input("D", d))));
        return new Voices("focal ratio").hear(HEADER, header).hear(RIG, rig.flatMap(RigContext::focalRatio));
    }

    private Optional<PixelPitch.Expected> expectedPitch() {
        if (skyScale.isPresent() && headerFocal.isPresent()) {
            double um = value(skyScale.get()) * value(headerFocal.get()) / HeaderOptics.ARCSEC_UM_PER_MM;
            return Optional.of(new PixelPitch.Expected(um, "the scale of the sky"));
        }
        return rigPitch().map(p -> new PixelPitch.Expected(value(p), "the rig's camera"));
    }

    private Optional<Reading<Quantity>> headerPitch() {
        return pitch.map(PixelPitch.Answer::reading);
    }

    private Optional<Reading<Quantity>> rigPitch() {
        Optional<Reading<Quantity>> pixel = rig.flatMap(r -> r.camera("pixel"));
        return binning == 1
                ? pixel
                : pixel.map(p -> derived(
                        value(p) * binning, Unit.MICROMETRE, "pixel × binning", PixelPitch.METHOD, input("pixel", p)));
    }

    private Optional<Reading<Quantity>> card(Function<FrameHeader, Optional<Cited<Double>>> which) {
        return source.flatMap(s -> s.optics().header().flatMap(which).map(c -> cited(s.optics(), c, Unit.MILLIMETRE)));
    }

    private static double value(Reading<Quantity> reading) {
        return reading.value().value();
    }
}
