package noctuary.draw;

/**
 * A labelled moment on a time axis.
 *
 * @param at days or seconds since 1970, as its axis counts
 * @param under a second line, such as the year where it changes; may be empty
 */
record TimeTick(double at, String label, String under) {}
