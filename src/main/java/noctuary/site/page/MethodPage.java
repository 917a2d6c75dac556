package noctuary.site.page;

import java.util.List;

/** Every definition, formula and source; the text stands in the template. */
public record MethodPage(Head head, List<Link> contents) {
    public MethodPage {
        contents = List.copyOf(contents);
    }
}
