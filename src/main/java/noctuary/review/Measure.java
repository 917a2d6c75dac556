package noctuary.review;

/**
 * A number that can be compared between two sides.
 *
 * @param id as in the downloads
 * @param unit as printed; empty for none
 * @param lessIsBetter whether a smaller value is what a keeper wants
 */
public record Measure(String id, String label, String unit, boolean lessIsBetter) {}
