package noctuary.stars;

/** Median with the 16th and 84th percentiles, and the standard error of the median. */
public record Summary(double median, double low, double high, double standardError) {}
