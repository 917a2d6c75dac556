package noctuary.site;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import noctuary.entry.Slug;
import noctuary.measure.ChoiceSheet;
import noctuary.measure.ChoiceSheet.Use;
import noctuary.measure.ChoiceSheets;
import noctuary.review.ChangeKind;
import noctuary.review.Review;
import noctuary.site.page.ChoicesPage;
import noctuary.site.page.Link;

/** The page of processing steps: what each cost and gained, and how the keeper usually does it. */
final class ChoicePages {
    private static final Address HERE = Address.CHOICES;
    private static final double[] NOISES = {0.8, 0.7, 0.6, 0.5, 0.4, 0.3};

    private final Ledger ledger;
    private final Heads heads;
    private final ChoiceCharts charts = new ChoiceCharts(HERE);

    ChoicePages(Ledger ledger, Heads heads) {
        this.ledger = ledger;
        this.heads = heads;
    }

    ChoicesPage page() {
        List<ChoiceSheet> choices =
                ChoiceSheets.of(ledger.content().entries(), ledger.content().versions());
        int versions = (int) ledger.content().versions().values().stream()
                .flatMap(List::stream)
                .filter(v -> !v.version().steps().isEmpty())
                .count();
        Set<String> ids = new HashSet<>();
        List<ChoicesPage.Habit> recipe = new ArrayList<>();
        List<ChoicesPage.Choice> pages = new ArrayList<>();
        for (ChoiceSheet choice : choices) {
            String id = id(choice.name(), ids);
            recipe.add(new Recipe(choice).habit(Link.of(choice.name(), "#" + id), versions));
            pages.add(choice(choice, id));
        }
        return new ChoicesPage(
                heads.of(HERE, "Choices", "Processing steps and their settings, with what they cost and gained."),
                recipe,
                pages);
    }

    private static String id(String name, Set<String> given) {
        String plain = "choice-" + Slug.lowerCase(name);
        String free = plain;
        for (int n = 2; !given.add(free); n++) {
            free = plain + "-" + n;
        }
        return free;
    }

    private ChoicesPage.Choice choice(ChoiceSheet choice, String id) {
        Optional<Review> review = review(choice);
        return new ChoicesPage.Choice(
                id,
                choice.name(),
                new Recipe(choice).summary(),
                review.map(r -> Link.of(
                                ReviewText.title(r.change()),
                                HERE.to(Address.change(r.change().id()))))
                        .orElse(null),
                review.map(r -> ReviewText.words(r.verdict())).orElse(""),
                charts.of(choice, id),
                choice.name().contains("noise") ? gentlest(choice) : List.of(),
                choice.uses().stream().map(this::use).toList());
    }

    private Optional<Review> review(ChoiceSheet choice) {
        return ledger.content().reviews().stream()
                .filter(r -> r.change().kind() == ChangeKind.CHOICE)
                .filter(r -> r.change()
                        .part()
                        .filter(p -> p.strip().equalsIgnoreCase(choice.name()))
                        .isPresent())
                .findFirst();
    }

    private List<ChoicesPage.Gentlest> gentlest(ChoiceSheet choice) {
        List<ChoicesPage.Gentlest> rows = new ArrayList<>();
        for (double noise : NOISES) {
            Optional<Use> found = ChoiceSheets.gentlest(choice, noise);
            found.ifPresent(use -> rows.add(new ChoicesPage.Gentlest(
                    percent(OptionalDouble.of(1 - noise)), use.setting(), percent(use.faintLost()), link(use))));
        }
        return rows;
    }

    private ChoicesPage.Use use(Use use) {
        return new ChoicesPage.Use(
                link(use),
                use.entry().night().map(Object::toString).orElse(""),
                use.version().version().name(),
                use.setting(),
                Numerals.fixed(use.noiseRatio(), 2),
                percent(use.faintLost()),
                Numerals.fixed(use.fwhmRatio(), 3),
                Numerals.fixed(use.backgroundCutPercent(), 1),
                Numerals.fixed(use.stretchFound(), 0));
    }

    private Link link(Use use) {
        return Link.of(
                use.entry().entry().title().value(),
                HERE.to(Address.entry(use.entry().entry().slug())) + "#versions");
    }

    static String percent(OptionalDouble share) {
        return share.isPresent() ? Math.round(100 * share.getAsDouble()) + "\u00a0%" : "";
    }
}
