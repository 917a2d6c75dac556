package noctuary.rig;

/** One thing checked about a rig, in a sentence a beginner understands. */
public record Check(String id, Level level, String text) {
    public enum Level {
        OK,
        WARN,
        WRONG
    }
}
