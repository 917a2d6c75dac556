package noctuary.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import noctuary.fact.Fact;
import noctuary.fact.Fact.Reading;
import noctuary.fact.Origin;
import noctuary.fact.Printed;
import noctuary.fact.Problem;
import noctuary.fact.Quantity;
import noctuary.fact.Unit;

/** The answers that several origins give to one question, the most trusted first. */
final class Voices {
    /** Origins further apart than this share of the trusted value are both shown. */
    static final double TOLERANCE = 0.02;

    private record Voice(String speaker, Reading<Quantity> reading) {}

    private final String about;
    private final List<Voice> voices = new ArrayList<>();

    /** @param about the question in a word or two, such as {@code focal length} */
    Voices(String about) {
        this.about = about;
    }

    /** @param speaker such as {@code the sky} or {@code the header} */
    Voices hear(String speaker, Optional<Reading<Quantity>> reading) {
        reading.ifPresent(r -> voices.add(new Voice(speaker, r)));
        return this;
    }

    Voices hear(String speaker, double value, Unit unit, Origin origin) {
        return hear(speaker, Optional.of(new Reading<>(Quantity.of(value, unit), origin)));
    }

    /** The first voice, with those that disagree with it; missing for {@code why} when nobody spoke. */
    Fact<Quantity> settle(String why) {
        if (voices.isEmpty()) {
            return Fact.missing(why);
        }
        List<Reading<Quantity>> others =
                dissenting().stream().map(Voice::reading).toList();
        return new Fact.Known<>(voices.get(0).reading(), others);
    }

    /** One notice for each voice that disagrees: "the header says 560 mm, the sky says 571 mm". */
    List<Problem> notices(String file) {
        return dissenting().stream()
                .map(v -> Problem.notice(
                        file,
                        about,
                        says(v) + ", " + says(voices.get(0)),
                        "the page uses what " + voices.get(0).speaker() + " says; correct the other if it is wrong"))
                .toList();
    }

    private List<Voice> dissenting() {
        if (voices.isEmpty()) {
            return List.of();
        }
        double trusted = voices.get(0).reading().value().value();
        return voices.stream()
                .skip(1)
                .filter(v -> Math.abs(v.reading().value().value() - trusted) > TOLERANCE * Math.abs(trusted))
                .toList();
    }

    private static String says(Voice voice) {
        return voice.speaker() + " says " + Printed.of(voice.reading().value());
    }
}
