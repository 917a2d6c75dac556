package noctuary.fits;

/**
 * One header card as it counts: keyword in upper case (HIERARCH names with dots), value as text without quotes.
 *
 * @param value empty for a blank value field
 * @param quoted true when the value stood in quotes
 */
public record Card(String keyword, String value, String comment, boolean quoted) {
    boolean isBlank() {
        return value.isBlank();
    }
}
