package noctuary.site.page;

import java.util.List;

/** Where the dark hours went. @param place whose darkness is counted; empty where no site tells its coordinates */
public record TimePart(String place, List<Row> months, List<Row> rigs, List<CauseRow> causes) {
    public TimePart {
        months = List.copyOf(months);
        rigs = List.copyOf(rigs);
        causes = List.copyOf(causes);
    }

    /** Hours as printed, empty where not known. @param lost such as {@code 0.8 cloud, 0.3 cabling} */
    public record Row(String name, int nights, String dark, String darkOut, String clear, String used, String lost) {}

    /**
     * What a cause that can be mended has cost.
     *
     * @param factor of the exposure there was that would have been at the most; empty where there was none
     * @param deeper magnitudes, likewise
     */
    public record CauseRow(String cause, int times, String minutes, String factor, String deeper) {}
}
