package noctuary.site.page;

import java.util.List;

/**
 * A fact as printed.
 *
 * @param value with unit; empty when missing
 * @param why the reason when missing
 * @param disputed whether origins disagree
 * @param readings the one that counts first, then those that disagree
 */
public record FactRow(
        String id, String label, String value, String why, String by, boolean disputed, List<Reading> readings) {
    public FactRow {
        readings = List.copyOf(readings);
    }

    public record Reading(String value, OriginNote origin) {}
}
