package noctuary.site.page;

import java.util.List;

/**
 * Every entry with what is known of it, and everything else with a page of its own, by first letter; the script adds a
 * box for words and fields for facts, which narrow both.
 *
 * @param words the script that holds the words of names and notes, relative to this page
 * @param facts the columns of numbers, in order
 */
public record FindPage(
        Head head, String words, JournalPage.Choices choices, List<Fact> facts, List<Row> entries, List<Group> groups) {
    public FindPage {
        facts = List.copyOf(facts);
        entries = List.copyOf(entries);
        groups = List.copyOf(groups);
    }

    /** @param id as the field's name */
    public record Fact(String id, String label, String unit) {}

    /** @param numbers as printed, one a fact, empty where not known */
    public record Row(EntryRow entry, List<String> numbers) {
        public Row {
            numbers = List.copyOf(numbers);
        }
    }

    public record Group(String letter, List<Item> items) {
        public Group {
            items = List.copyOf(items);
        }
    }

    /** @param kind target, rig or change */
    public record Item(Link link, String kind, String detail) {}
}
