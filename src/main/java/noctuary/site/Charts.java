package noctuary.site;

import java.util.List;
import noctuary.measure.EntrySheet;
import noctuary.measure.FrameSheet;
import noctuary.measure.RigSheet;
import noctuary.site.page.Drawing;
import noctuary.site.page.Markup;

/** The only class that turns sheets into charts. */
final class Charts {
    private final Ledger ledger;

    Charts(Ledger ledger) {
        this.ledger = ledger;
    }

    /** Hours of exposure by month, one stack a rig. */
    Drawing hoursByMonth(List<Usage> usage) {
        return drawing("Exposure by month, in hours", usage.size());
    }

    /** Star width over time, one mark an entry, with the changes of rigs. */
    Drawing sharpness(List<EntrySheet> sheets, List<Changes.Change> changes) {
        return drawing("Star width (FWHM) by night, in arcseconds", sheets.size() + changes.size());
    }

    /** Star shapes over the 3 by 3 grid. */
    Drawing shapes(FrameSheet shown) {
        return drawing("Star shapes across the field", shown.report().zones().size());
    }

    /** Star width, background and star count by time. */
    Drawing course(EntrySheet sheet) {
        return drawing("The night's course", sheet.frames().size());
    }

    /** Exposure growing from attempt to attempt. */
    Drawing growth(List<EntrySheet> attempts) {
        return drawing("Exposure growing, in hours", attempts.size());
    }

    /** The train from the corrector to the sensor, to scale. */
    Drawing train(RigSheet.State state) {
        return drawing("The train, to scale", state.train().size());
    }

    /** Measured stars over the picture of the file they were found on. */
    Markup overlay(FrameSheet shown) {
        return Markup.NONE;
    }

    private Drawing drawing(String caption, int count) {
        return count == 0 || ledger == null ? null : new Drawing(caption, Markup.NONE);
    }

}
