package noctuary.review;

import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import noctuary.measure.FrameReport;
import noctuary.measure.FrameSheet;
import noctuary.stars.FieldModel;
import noctuary.stars.StarField;

/** Star width over the field, from the field model of each file where it is sure enough. */
final class FieldReadings {
    /** Standard error, as a share of the width in the middle, up to which a figure counts: common practice, no source. */
    private static final double SURE = 0.1;

    private FieldReadings() {}

    static Reading cornerExcess(EntryNight night) {
        return read(night, FieldModel::cornerExcessPx, FieldModel::cornerExcessErrorPx);
    }

    static Reading tilt(EntryNight night) {
        return read(night, FieldModel::tiltPx, FieldModel::tiltErrorPx);
    }

    static Reading curvature(EntryNight night) {
        return read(night, FieldModel::curvaturePx, FieldModel::curvatureErrorPx);
    }

    private static Reading read(
            EntryNight night, ToDoubleFunction<FieldModel> value, ToDoubleFunction<FieldModel> error) {
        return Readings.median(
                night, "too few stars over the field to be sure, or no image scale", (f, s) -> arcsec(f, value, error));
    }

    private static OptionalDouble arcsec(
            FrameSheet file, ToDoubleFunction<FieldModel> value, ToDoubleFunction<FieldModel> error) {
        return file.measurement()
                .field()
                .flatMap(StarField::model)
                .filter(m -> error.applyAsDouble(m) <= SURE * m.centreFwhmPx())
                .flatMap(m -> file.report()
                        .imageScale()
                        .map(FrameReport.Scale::arcsecPerPx)
                        .map(scale -> OptionalDouble.of(scale * value.applyAsDouble(m))))
                .orElse(OptionalDouble.empty());
    }
}
