package noctuary.site;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Collectors;

/** A page's path from the site's top folder, and the way from it to others. */
record Address(String path) {
    static final Address JOURNAL = new Address("index.html");
    static final Address TARGETS = new Address("targets/index.html");
    static final Address RIGS = new Address("rigs/index.html");
    static final Address CHANGES = new Address("changes/index.html");
    static final Address NIGHTS = new Address("nights/index.html");
    static final Address LESSONS = new Address("lessons/index.html");
    static final Address SHEET = new Address("lessons/sheet.html");
    static final Address CHOICES = new Address("choices/index.html");
    static final Address METHOD = new Address("method/index.html");
    static final Address FIND = new Address("find/index.html");
    static final Address DOWNLOADS = new Address("data/index.html");

    static Address entry(String slug) {
        return new Address("entries/" + slug + "/index.html");
    }

    static Address target(String id) {
        return new Address("targets/" + id + "/index.html");
    }

    static Address rig(String id) {
        return new Address("rigs/" + id + "/index.html");
    }

    /** The sheet for a night on one target. */
    static Address sheet(String targetId) {
        return new Address("lessons/sheet-" + targetId + ".html");
    }

    static Address change(String id) {
        return new Address("changes/" + id + "/index.html");
    }

    /** The relative way to the top folder: empty or ending in a slash. */
    String root() {
        return "../".repeat((int) path.chars().filter(c -> c == '/').count());
    }

    String to(Address other) {
        return to(other.path);
    }

    /** A relative reference to a path from the top folder, percent-encoded. */
    String to(String other) {
        return root() + encoded(other);
    }

    static String encoded(String path) {
        return Arrays.stream(path.split("/", -1))
                .map(segment ->
                        URLEncoder.encode(segment, StandardCharsets.UTF_8).replace("+", "%20"))
                .collect(Collectors.joining("/"));
    }
}
