package noctuary.fits;

/**
 * One header card as it counts: keyword in upper case (HIERARCH names with dots), value as text without quotes.
 *
 * @param value empty for a blank value field
 */
public record Card(String keyword, String value, String comment) {}
