package noctuary.measure;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.util.List;
import noctuary.stars.Star;
import noctuary.stars.StarField;

/** A report as one line of JSON; what is absent is null. */
public final class ReportJson {
    private static final JsonMapper JSON = JsonMapper.builder()
            .addModule(new Jdk8Module())
            .addModule(new JavaTimeModule())
            .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
            .build();

    private ReportJson() {}

    public static String of(FrameReport report) {
        return write(report);
    }

    /** As {@link #of}, with {@code list}: each measured star by its 0-based pixel centre. */
    public static String withStars(FrameReport report, Measurement measurement) {
        List<Listed> stars = measurement.field().map(StarField::stars).orElse(List.of()).stream()
                .filter(Star::measured)
                .map(Listed::of)
                .toList();
        return write(new WithStars(report, stars));
    }

    private record WithStars(@JsonUnwrapped FrameReport report, List<Listed> list) {}

    private record Listed(
            double x, double y, double flux, double fwhmPx, double ellipticity, double angleDeg, double snr) {
        static Listed of(Star s) {
            return new Listed(s.x(), s.y(), s.flux(), s.fwhmPx(), s.ellipticity(), s.angleDeg(), s.snr());
        }
    }

    private static String write(Object value) {
        try {
            return JSON.writeValueAsString(value);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a report must be writable", e);
        }
    }
}
