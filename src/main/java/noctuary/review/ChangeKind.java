package noctuary.review;

import java.util.Set;

/** What a change changed; the same thing is then no reason against it. */
public enum ChangeKind {
    RIG("rig"),
    SITE("site"),
    WAY("way"),
    CHOICE("choice");

    private final String id;

    ChangeKind(String id) {
        this.id = id;
    }

    /** The word used in the downloads. */
    public String id() {
        return id;
    }

    /** What the two sides differ in by definition. */
    Set<Influence> changes() {
        return switch (this) {
            case RIG -> Set.of(Influence.RIG);
            case SITE -> Set.of(Influence.SITE);
            case WAY, CHOICE -> Set.of();
        };
    }
}
