package noctuary.advice;

/**
 * A sentence derived from an entry's sheet.
 *
 * @param id stays the same over time, such as {@code limit-guiding}
 * @param settle what would settle the doubt, as a sentence; empty where there is none
 * @param evidence the numbers behind it, without a full stop
 */
public record Finding(String id, String text, String settle, String evidence) {
    /** Whether there is something to settle. */
    public boolean asksForAction() {
        return !settle.isEmpty();
    }
}
