package noctuary.site.page;

import java.util.List;

/**
 * Everything with a page of its own, by first letter; the script adds a box that looks through the words of the notes.
 *
 * @param words the script that holds them, relative to this page
 */
public record FindPage(Head head, String words, List<Group> groups) {
    public FindPage {
        groups = List.copyOf(groups);
    }

    public record Group(String letter, List<Item> items) {
        public Group {
            items = List.copyOf(items);
        }
    }

    /** @param kind entry, target, rig or change */
    public record Item(Link link, String kind, String detail) {}
}
