package noctuary.rig;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Every joint of the train, one check each. */
final class JointChecks {
    private static final String HOW =
            "write it as \"M48x0.75 male\", \"2 in x 24 tpi female\" or \"1.25 in push-fit male\"";

    private JointChecks() {}

    static List<Check> of(List<RigSpec.TrainPart> train) {
        List<RigSpec.TrainPart> joined =
                train.stream().filter(part -> !sitsInside(part)).toList();
        List<Check> checks = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (int i = 1; i < joined.size(); i++) {
            String number = "-" + i;
            between(joined.get(i - 1), joined.get(i))
                    .map(check ->
                            ids.add(check.id()) ? check : new Check(check.id() + number, check.level(), check.text()))
                    .ifPresent(checks::add);
        }
        return checks;
    }

    /** A filter without joints of its own sits inside its neighbour. */
    private static boolean sitsInside(RigSpec.TrainPart part) {
        return part.front().isEmpty()
                && part.rear().isEmpty()
                && part.lengthMm().isEmpty();
    }

    private static Optional<Check> between(RigSpec.TrainPart a, RigSpec.TrainPart b) {
        if (a.rear().isEmpty() && b.front().isEmpty()) {
            return Optional.empty();
        }
        if (a.rear().isEmpty() || b.front().isEmpty()) {
            String missing = a.rear().isEmpty() ? "rear of " + a.name() : "front of " + b.name();
            return Optional.of(
                    check(a, b, Check.Level.WARN, Words.say("not checked, the %s is not written.", missing)));
        }
        return Optional.of(joint(a, b, a.rear().get(), b.front().get()));
    }

    private static Check joint(RigSpec.TrainPart a, RigSpec.TrainPart b, RigSpec.Joint rear, RigSpec.Joint front) {
        if (rear.unread() || front.unread()) {
            String text = (rear.unread() ? rear : front).text();
            return check(a, b, Check.Level.WARN, Words.say("not checked, \"%s\" is not understood: %s.", text, HOW));
        }
        Optional<String> hindrance = Mating.hindrance(rear, front);
        if (hindrance.isPresent()) {
            String sentence = Words.say("they will not mate: %s. %s", hindrance.get(), Mating.adapter(rear, front));
            return check(a, b, Check.Level.WRONG, sentence);
        }
        Optional<String> odd = oddity(rear).or(() -> oddity(front));
        return odd.isPresent()
                ? check(a, b, Check.Level.WARN, odd.get())
                : check(
                        a,
                        b,
                        Check.Level.OK,
                        Words.say(
                                "%s, %s into %s.",
                                Mating.size(rear), Mating.gender(rear.male()), Mating.gender(front.male())));
    }

    /** A pitch that no standard knows is a slip of the pen more often than a thread. */
    private static Optional<String> oddity(RigSpec.Joint joint) {
        boolean known = joint.pitchMm() == 0
                || Threads.standardMetricPitch(joint.pitchMm())
                || Threads.standardTpi(Threads.MM_PER_INCH / joint.pitchMm());
        if (known) {
            return Optional.empty();
        }
        List<String> usual = Threads.usualOf(joint.diameterMm());
        String hint = usual.isEmpty() ? "" : "; usual at that diameter: " + Words.list(usual);
        return Optional.of(Words.say(
                "they would mate, but \"%s\" has a pitch that neither ISO 261 nor the inch series knows%s.",
                joint.text(), hint));
    }

    private static Check check(RigSpec.TrainPart a, RigSpec.TrainPart b, Check.Level level, String sentence) {
        return new Check(
                Words.say("joint-%s-%s", id(a), id(b)),
                level,
                Words.say("%s to %s: %s", capitalised(a.name()), b.name(), sentence));
    }

    private static String id(RigSpec.TrainPart part) {
        return part.name().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    }

    private static String capitalised(String name) {
        return name.isEmpty() ? name : name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }
}
