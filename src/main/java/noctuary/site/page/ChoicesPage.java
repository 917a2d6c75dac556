package noctuary.site.page;

import java.util.List;

/** Processing steps over time. */
public record ChoicesPage(Head head, List<Habit> recipe, List<Choice> choices) {
    public ChoicesPage {
        recipe = List.copyOf(recipe);
        choices = List.copyOf(choices);
    }

    /** A step of the usual recipe. @param usual setting; empty when there is none */
    public record Habit(Link choice, String usual, String range, String times) {}

    /**
     * @param summary one sentence
     * @param chart null with nothing to show
     * @param review of entries with it against those without; null where all or none have it
     * @param verdict of that review
     * @param gentlest settings that reached a noise, so far
     */
    public record Choice(
            String id,
            String name,
            String summary,
            Link review,
            String verdict,
            Drawing chart,
            List<Gentlest> gentlest,
            List<Use> uses) {
        public Choice {
            gentlest = List.copyOf(gentlest);
            uses = List.copyOf(uses);
        }
    }

    public record Gentlest(String noise, String setting, String cost, Link entry) {}

    /** Numbers are empty where absent. */
    public record Use(
            Link entry,
            String night,
            String version,
            String setting,
            String noise,
            String lost,
            String width,
            String cut,
            String stretch) {}
}
