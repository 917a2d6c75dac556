package noctuary.site;

import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.Map;
import java.util.stream.Collectors;
import noctuary.measure.ChoiceSheet;
import noctuary.measure.ChoiceSheet.Use;
import noctuary.site.page.ChoicesPage;
import noctuary.site.page.Link;

/** How a step is usually done. */
final class Recipe {
    private static final int DECIMALS = 3;

    private final ChoiceSheet choice;

    Recipe(ChoiceSheet choice) {
        this.choice = choice;
    }

    /** @param versions that name any steps */
    ChoicesPage.Habit habit(Link link, int versions) {
        return new ChoicesPage.Habit(
                link,
                usual(),
                range(),
                choice.uses().size() + " of " + Numerals.count(versions, "version", "versions"));
    }

    /** The setting chosen most often; of those chosen equally often the latest. */
    private String usual() {
        Map<String, Long> counts =
                choice.uses().stream().collect(Collectors.groupingBy(Use::setting, Collectors.counting()));
        return choice.uses().stream()
                .map(Use::setting)
                .max(Comparator.comparingLong(counts::get))
                .orElse("");
    }

    private String range() {
        DoubleSummaryStatistics numbers = choice.uses().stream()
                .flatMapToDouble(use -> use.strength().stream())
                .summaryStatistics();
        if (numbers.getCount() < 2 || numbers.getMin() == numbers.getMax()) {
            return "";
        }
        return Numerals.trimmed(numbers.getMin(), DECIMALS) + " to " + Numerals.trimmed(numbers.getMax(), DECIMALS);
    }

    String summary() {
        long measured = choice.uses().stream()
                .filter(use -> use.version().effect().isPresent())
                .count();
        String alone = choice.uses().stream().anyMatch(use -> !use.alone())
                ? " Each row shows what all steps of its version did together."
                : "";
        return "In " + Numerals.count(choice.uses().size(), "version", "versions") + ", " + measured + " measured."
                + alone;
    }
}
