package noctuary.draw;

import java.util.ArrayList;
import java.util.List;

/**
 * Shifts with their intervals, one below the other about a line at zero (a caterpillar plot).
 *
 * @param scale what the axis counts, such as {@code change, %}
 * @param below what lies left of zero, such as {@code smaller}; may be empty
 * @param above what lies right of zero; may be empty
 */
public record IntervalPlot(String title, String scale, String below, String above, List<Row> rows) implements Chart {
    public IntervalPlot {
        rows = List.copyOf(rows);
    }

    /** What a row means to the reader; told by shape as well as by colour. */
    public enum Tone {
        BETTER,
        WORSE,
        OPEN
    }

    /**
     * @param shift NaN when none can be given
     * @param low lower end of the interval, NaN when there is none
     * @param high upper end of the interval, NaN when there is none
     * @param note verdict or reason, in a few words
     */
    public record Row(String label, double shift, double low, double high, Tone tone, String note) {
        boolean hasShift() {
            return Double.isFinite(shift);
        }

        boolean hasInterval() {
            return Double.isFinite(low) && Double.isFinite(high);
        }
    }

    @Override
    public String svg(String id, Form form) {
        return new CaterpillarPlot(this, form).draw(new Alternative(id, title, description()));
    }

    static String numbers(Row row) {
        if (!row.hasShift()) {
            return "";
        }
        String shift = Digits.signed(row.shift(), decimals(row));
        return row.hasInterval()
                ? shift + " (" + Digits.signed(row.low(), decimals(row)) + " to "
                        + Digits.signed(row.high(), decimals(row)) + ")"
                : shift;
    }

    /** As many decimals as leave two figures of the interval's half width. */
    private static int decimals(Row row) {
        double half = row.hasInterval() ? (row.high() - row.low()) / 2 : Math.abs(row.shift());
        return half > 0 ? Math.max(0, Math.min(6, 1 - (int) Math.floor(Math.log10(half)))) : 1;
    }

    private String description() {
        if (rows.isEmpty()) {
            return "Nothing to compare.";
        }
        List<String> sentences = new ArrayList<>();
        for (Row row : rows) {
            String numbers = numbers(row);
            sentences.add(row.label() + ": " + (numbers.isEmpty() ? "" : numbers + ", ") + row.note());
        }
        return scale + ", with interval. " + String.join(". ", sentences) + ".";
    }
}
