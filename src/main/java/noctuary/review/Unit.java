package noctuary.review;

/** One night's value on one side, as it enters the comparison. */
record Unit(NightValue night, boolean after) {}
