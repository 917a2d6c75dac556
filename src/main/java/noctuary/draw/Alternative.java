package noctuary.draw;

/**
 * The text alternative of a chart.
 *
 * @param description what the numbers say, in a sentence or two
 */
record Alternative(String id, String title, String description) {}
