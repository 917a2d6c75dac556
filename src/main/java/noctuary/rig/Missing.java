package noctuary.rig;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Why a figure is absent: the inputs that the rig's note does not give. */
final class Missing {
    private static final String FOCAL_LENGTH = "focal length";
    private static final String APERTURE = "aperture";
    private static final String PIXEL = "pixel size";

    private Missing() {}

    static Map<String, String> of(RigSpec rig) {
        RigSpec.Optics optics = rig.optics();
        RigSpec.Camera camera = rig.camera();
        Map<String, Boolean> given = new LinkedHashMap<>();
        given.put(FOCAL_LENGTH, positive(optics.focalLengthMm()));
        given.put(APERTURE, positive(optics.apertureMm()));
        given.put(PIXEL, positive(camera.pixelUm()));
        given.put("width in pixels", camera.width().isPresent());
        given.put("height in pixels", camera.height().isPresent());
        given.put("back focus", optics.backFocusMm().isPresent());
        given.put("payload", !rig.payload().isEmpty());
        Map<String, String> reasons = new LinkedHashMap<>();
        needs().forEach((figure, inputs) -> reason(inputs, given, reasons, figure));
        spacing(Spacing.of(rig), reasons);
        return Map.copyOf(reasons);
    }

    private static boolean positive(OptionalDouble value) {
        return value.orElse(0) > 0;
    }

    private static Map<String, List<String>> needs() {
        return Map.of(
                "effectiveFocalLengthMm", List.of(FOCAL_LENGTH),
                "focalRatio", List.of(FOCAL_LENGTH, APERTURE),
                "imageScaleArcsecPerPx", List.of(PIXEL, FOCAL_LENGTH),
                "fieldWidthDeg", List.of(PIXEL, "width in pixels", FOCAL_LENGTH),
                "fieldHeightDeg", List.of(PIXEL, "height in pixels", FOCAL_LENGTH),
                "sensorDiagonalMm", List.of(PIXEL, "width in pixels", "height in pixels"),
                "airyFwhmArcsec", List.of(APERTURE),
                "rayleighArcsec", List.of(APERTURE),
                "depthOfFocusUm", List.of(FOCAL_LENGTH, APERTURE),
                "payloadKg", List.of("payload"));
    }

    private static void reason(
            List<String> inputs, Map<String, Boolean> given, Map<String, String> reasons, String figure) {
        List<String> absent = new ArrayList<>(inputs);
        absent.removeIf(given::get);
        if (!absent.isEmpty()) {
            reasons.put(figure, sentence(absent));
        }
    }

    private static String sentence(List<String> absent) {
        return "the rig's note does not give the " + Words.list(absent);
    }

    private static void spacing(Spacing spacing, Map<String, String> reasons) {
        if (spacing.statedMm().isEmpty()) {
            reasons.put("backFocusRequiredMm", sentence(List.of("back focus")));
        }
        if (spacing.actualMm().isEmpty()) {
            reasons.put(
                    "backFocusActualMm",
                    spacing.unmeasured().isEmpty()
                            ? "no part of the train has a length"
                            : "the rig's note does not give the length of " + Words.list(spacing.unmeasured()));
        }
    }
}
