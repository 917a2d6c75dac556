package noctuary.site.page;

import java.util.List;

/**
 * What limits an entry, and what exposure it still wants.
 *
 * @param why there is no depth budget; empty where there is one
 * @param wanted null without exposure
 */
public record Advised(List<FindingRow> findings, List<BudgetPart> budgets, String why, Wanted wanted) {
    public Advised {
        findings = List.copyOf(findings);
        budgets = List.copyOf(budgets);
    }

    public record FindingRow(String id, String text, String settle, String evidence) {}

    public record BudgetPart(String title, String total, List<TermRow> terms) {
        public BudgetPart {
            terms = List.copyOf(terms);
        }
    }

    /** @param share of the squared total, 0 to 100; 0 where the amount is empty */
    public record TermRow(String label, String amount, int share, String how) {}

    /**
     * @param growth whether the stack is as quiet as its frames foretell; empty where nothing tells
     * @param fall whether noise falls with time, by the entry's own frames; empty where nothing tells
     * @param fallChart null where there is no {@code fall}
     * @param ofPlaces which of all places {@code places} are; empty where they are all
     */
    public record Wanted(
            String total,
            String sub,
            String subEvidence,
            String growth,
            String fall,
            List<FallRow> falling,
            Drawing fallChart,
            List<DeeperRow> deeper,
            List<PlaceRow> places,
            String ofPlaces) {
        public Wanted {
            falling = List.copyOf(falling);
            deeper = List.copyOf(deeper);
            places = List.copyOf(places);
        }
    }

    /**
     * A mean of so many frames, in counts.
     *
     * @param fresh of its noise, what differs from frame to frame
     * @param root what the root of the time makes of the first row
     */
    public record FallRow(String frames, String time, String noise, String fresh, String root) {}

    /** @param more than there is; empty where it cannot be reached */
    public record DeeperRow(String magnitudes, String total, String more) {}

    public record PlaceRow(String rig, String site, String total, String assuming) {}
}
