package noctuary.site;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import noctuary.review.Change;
import noctuary.review.Measure;
import noctuary.review.MeasureReview;
import noctuary.review.NightValue;
import noctuary.review.Review;
import noctuary.site.JournalRecord.ChangeRecord;
import noctuary.site.JournalRecord.MeasureRecord;

/** Reviews as they stand in the downloads and as {@code review --json} prints them. */
public final class ChangeRecords {
    private static final JsonMapper JSON =
            JsonMapper.builder().addModule(new Jdk8Module()).build();

    private ChangeRecords() {}

    /** One object on one line, its keys those of {@code changes} in {@code data/journal.json}. */
    public static String json(Review review) {
        try {
            return JSON.writeValueAsString(of(review));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a review must be writable", e);
        }
    }

    static ChangeRecord of(Review review) {
        Change change = review.change();
        return new ChangeRecord(
                change.id(),
                change.kind().id(),
                change.date().map(LocalDate::toString).orElse(null),
                change.before().id(),
                change.after().id(),
                review.measures().stream().map(ChangeRecords::measure).toList());
    }

    private static MeasureRecord measure(MeasureReview m) {
        Measure measure = m.nights().measure();
        return new MeasureRecord(
                measure.id(),
                measure.unit(),
                nights(m.nights().before()),
                nights(m.nights().after()),
                finite(m.before()),
                finite(m.after()),
                finite(m.shift()),
                finite(m.low()),
                finite(m.high()),
                finite(m.p()),
                m.verdict().id(),
                m.why());
    }

    private static int nights(List<NightValue> values) {
        return (int) values.stream().map(NightValue::night).distinct().count();
    }

    /** JSON has no infinities: an open end of an interval is absent. */
    private static OptionalDouble finite(OptionalDouble value) {
        return value.isPresent() && Double.isFinite(value.getAsDouble()) ? value : OptionalDouble.empty();
    }
}
