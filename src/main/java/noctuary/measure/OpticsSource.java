package noctuary.measure;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import noctuary.fits.FrameHeader;

/**
 * The files whose headers tell the optics of an entry. The pixels must be those that the stars are measured on, so a
 * stack speaks for frames only where it has their size: one resampled to another size has another scale.
 */
record OpticsSource(FrameSheet optics, FrameSheet sky) {
    private static final double SAME_SIZE = 0.05;

    static Optional<OpticsSource> of(List<FrameSheet> frames, Optional<FrameSheet> stack) {
        List<FrameSheet> lights = frames.stream().filter(FrameSheet::counted).toList();
        Optional<FrameSheet> readableStack = stack.filter(s -> s.header().isPresent());
        if (lights.isEmpty()) {
            return readableStack.map(s -> new OpticsSource(s, s));
        }
        FrameSheet optics =
                first(lights, h -> HeaderOptics.arcsecPerPx(h).isPresent()).orElse(lights.get(0));
        FrameSheet sky = first(lights, h -> h.sky().isPresent())
                .or(() -> readableStack.filter(s -> sameSize(s, optics)))
                .orElse(optics);
        return Optional.of(new OpticsSource(optics, sky));
    }

    private static Optional<FrameSheet> first(List<FrameSheet> lights, Predicate<FrameHeader> tells) {
        Stream<FrameSheet> telling =
                lights.stream().filter(f -> tells.test(f.header().orElseThrow()));
        return telling.findFirst();
    }

    private static boolean sameSize(FrameSheet a, FrameSheet b) {
        return near(a.measurement().width(), b.measurement().width())
                && near(a.measurement().height(), b.measurement().height());
    }

    private static boolean near(int a, int b) {
        return Math.abs(a - b) <= SAME_SIZE * b;
    }
}
