package noctuary.review;

/** A measure that says nothing of a change. @param why a sentence */
public record AbsentMeasure(Measure measure, String why) {}
