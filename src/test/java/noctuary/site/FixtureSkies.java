package noctuary.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.image.Affine;
import noctuary.measure.SkyMatch;
import noctuary.site.SiteContent.CutStar;
import noctuary.site.SiteContent.Picture;
import noctuary.site.SiteContent.Sky;
import noctuary.site.SiteContent.View;

/** Two attempts of the fixture on one grid: pictures of it stand for what laying them would give. */
final class FixtureSkies {
    private static final List<String> PLACES =
            List.of("top left", "top right", "centre", "bottom left", "bottom right");

    private FixtureSkies() {}

    static Map<String, Sky> all() {
        SkyMatch match = new SkyMatch(Affine.SAME, 231, 0.31, 1.5126, -42.1, true, OptionalDouble.of(0.8));
        return Map.of(
                "ngc-6888",
                new Sky(
                        "long-tube",
                        FixtureFrames.WIDTH,
                        FixtureFrames.HEIGHT,
                        1,
                        false,
                        List.of(view("short-tube", match), view("long-tube", match)),
                        Map.of("odd", "2 stars were found on it, and it takes six")));
    }

    private static View view(String slug, SkyMatch match) {
        Picture picture = FixturePictures.all().get(slug).get("stack");
        List<CutStar> stars = new ArrayList<>();
        for (String place : PLACES) {
            boolean none = place.equals("bottom right");
            String path = "pictures/" + slug + "/stack-320.jpg";
            stars.add(new CutStar(place, none ? "" : path, 144, none ? Double.NaN : 3.1, none ? Double.NaN : 0.08));
        }
        return new View(slug, match, false, Optional.of(picture), picture, stars);
    }
}
