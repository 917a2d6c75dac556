package noctuary.site.page;

import java.util.List;

/**
 * An entry in a list.
 *
 * @param night ISO date, or empty
 * @param hours exposure in hours with two decimals, or empty
 * @param fwhm arcseconds with two decimals, or empty
 */
public record EntryRow(
        Link entry,
        Link target,
        Link rig,
        String site,
        List<String> filters,
        String night,
        String hours,
        String fwhm,
        String scale) {
    public EntryRow {
        filters = List.copyOf(filters);
    }
}
