package noctuary.rig;

import java.util.Optional;

/** Whether two joints screw together, and if not, why and what would join them. */
final class Mating {
    /** Nominal sizes are the same within this, mm: rounding of inches, and a third of what ISO 965-1 lets 6g vary. */
    static final double SAME_DIAMETER_MM = 0.05;
    /** 24 threads an inch are written as 1.058 or 1.06 mm. */
    private static final double SAME_PITCH_MM = 0.005;

    private Mating() {}

    /** The reason why they do not mate; empty where they do. */
    static Optional<String> hindrance(RigSpec.Joint rear, RigSpec.Joint front) {
        if (pushFit(rear) != pushFit(front)) {
            return Optional.of("one is a push fit, the other a thread");
        }
        if (!sameDiameter(rear, front)) {
            return Optional.of(diameters(rear, front));
        }
        if (Math.abs(rear.pitchMm() - front.pitchMm()) > SAME_PITCH_MM) {
            return Optional.of(Words.say(
                    "both are %s wide, but the pitch is %s on one side and %s on the other: they look alike and "
                            + "bind after a turn or two, so never force them",
                    Words.mm(rear.diameterMm()), Words.mm(rear.pitchMm()), Words.mm(front.pitchMm())));
        }
        return rear.male() == front.male() ? Optional.of("both are " + gender(rear.male())) : Optional.empty();
    }

    /** The ring that would join them, front end first. */
    static String adapter(RigSpec.Joint rear, RigSpec.Joint front) {
        return Words.say(
                "An adapter with %s %s in front and %s %s behind joins them; its length counts in the spacing.",
                size(rear), gender(!rear.male()), size(front), gender(!front.male()));
    }

    /** Size without gender, as written on a part. */
    static String size(RigSpec.Joint joint) {
        if (pushFit(joint)) {
            return Words.number(joint.diameterMm() / Threads.MM_PER_INCH, 3) + " in push fit";
        }
        double tpi = Threads.MM_PER_INCH / joint.pitchMm();
        if (!Threads.standardMetricPitch(joint.pitchMm()) && Math.abs(tpi - Math.rint(tpi)) < 1e-6) {
            return Words.say(
                    "%s in x %s tpi", Words.number(joint.diameterMm() / Threads.MM_PER_INCH, 4), Words.number(tpi, 1));
        }
        return Words.say("M%sx%s", Words.number(joint.diameterMm(), 2), Words.number(joint.pitchMm(), 3));
    }

    static String gender(boolean male) {
        return male ? "male" : "female";
    }

    private static boolean pushFit(RigSpec.Joint joint) {
        return joint.pitchMm() == 0;
    }

    private static boolean sameDiameter(RigSpec.Joint a, RigSpec.Joint b) {
        return Math.abs(a.diameterMm() - b.diameterMm()) <= SAME_DIAMETER_MM;
    }

    private static String diameters(RigSpec.Joint rear, RigSpec.Joint front) {
        double apart = Math.abs(rear.diameterMm() - front.diameterMm());
        String plain = Words.say(
                "%s is %s wide and %s is %s",
                size(rear), Words.mm(rear.diameterMm()), size(front), Words.mm(front.diameterMm()));
        double grip = Threads.profileDepthMm(Math.max(rear.pitchMm(), front.pitchMm()));
        return apart < grip ? plain + ": close enough to grip a little, and to fall out, so never trust it" : plain;
    }
}
