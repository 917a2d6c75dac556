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

    /** @param growth whether noise fell with time; empty where nothing tells */
    public record Wanted(
            String total,
            String sub,
            String subEvidence,
            String growth,
            List<DeeperRow> deeper,
            List<PlaceRow> places) {
        public Wanted {
            deeper = List.copyOf(deeper);
            places = List.copyOf(places);
        }
    }

    /** @param more than there is; empty where it cannot be reached */
    public record DeeperRow(String magnitudes, String total, String more) {}

    public record PlaceRow(String rig, String site, String total, String assuming) {}
}
