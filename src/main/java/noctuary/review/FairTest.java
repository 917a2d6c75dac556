package noctuary.review;

/**
 * The experiment that would settle an open question.
 *
 * @param question for a reader, with a question mark
 * @param target to take; empty when no entry names one
 * @param nightsEachSide at least; as pairs when {@code withinNights}; entries for a choice
 * @param framesEachNight on either side
 * @param withinNights whether both ways alternate within one night, else night by night
 * @param scatterPercent from night to night within a side (within nights: from frame to frame), of the value; of
 *     pairs for a choice, 0 where there are too few
 * @param wantedPercent difference that would then be seen in four experiments of five
 * @param sentence all of it
 */
public record FairTest(
        String question,
        String target,
        int nightsEachSide,
        int framesEachNight,
        boolean withinNights,
        double scatterPercent,
        double wantedPercent,
        String sentence) {}
