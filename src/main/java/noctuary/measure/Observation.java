package noctuary.measure;

/**
 * A careful sentence about a night and the numbers behind it.
 *
 * @param id of the rule: {@code focus-drift}, {@code cloud}, {@code dew}, {@code obstruction} or {@code trailing}
 */
public record Observation(String id, String text, String evidence) {}
