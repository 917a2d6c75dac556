package noctuary.entry;

import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.yaml.snakeyaml.LoaderOptions;

/** YAML text to a tree. Whatever stood before a mistake in the text is kept. */
final class YamlTree {
    /** Characters of front matter that are read at most. */
    static final int LONGEST = 65_536;

    private static final int DEEPEST = 20;
    private static final YAMLFactory YAML = factory();

    private final YAMLParser parser;
    private final String text;
    private final int linesBefore;
    private final Margin margin;
    private boolean broken;

    private YamlTree(String text, int linesBefore, Margin margin) throws IOException {
        this.parser = YAML.createParser(text);
        this.text = text;
        this.linesBefore = linesBefore;
        this.margin = margin;
    }

    private static YAMLFactory factory() {
        var options = new LoaderOptions();
        options.setCodePointLimit(LONGEST + 1);
        options.setNestingDepthLimit(2 * DEEPEST);
        var limits = StreamReadConstraints.builder()
                .maxNestingDepth(2 * DEEPEST)
                .maxDocumentLength(4L * LONGEST)
                .build();
        return YAMLFactory.builder()
                .loaderOptions(options)
                .streamReadConstraints(limits)
                .build();
    }

    /** @param linesBefore lines of the file above the text */
    static Node.Mapping read(String text, int linesBefore, Margin margin) {
        if (text.length() > LONGEST) {
            margin.fault(
                    linesBefore + 1,
                    "",
                    "the keys take more than " + LONGEST / 1024 + " kB and were not read",
                    "keep long text in the note below the second --- line");
            return new Node.Mapping(List.of(), linesBefore + 1, false);
        }
        try {
            return new YamlTree(text, linesBefore, margin).root();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Node.Mapping root() throws IOException {
        JsonToken first = next();
        Node node = first == null ? null : node(first, 0);
        if (node != null && !broken && next() != null) {
            margin.fault(here(), "", "a second YAML document begins here", "keep all keys in one block");
        }
        if (node instanceof Node.Mapping mapping) {
            return mapping;
        }
        if (node != null && !(node instanceof Node.Scalar scalar && scalar.blank())) {
            margin.fault(node.line(), "", "keys with values are expected here", "write lines such as \"rig: heron\"");
            broken = true;
        }
        return new Node.Mapping(List.of(), linesBefore + 1, !broken);
    }

    /** Null where the value was refused. */
    private Node node(JsonToken token, int depth) throws IOException {
        if (depth > DEEPEST) {
            margin.fault(here(), "", "keys are nested more than " + DEEPEST + " deep", "use fewer brackets");
            broken = true;
            return null;
        }
        int line = here();
        refuseTag(line);
        return switch (token) {
            case START_OBJECT -> mapping(line, depth);
            case START_ARRAY -> sequence(line, depth);
            default -> scalar(token, line);
        };
    }

    private Node scalar(JsonToken token, int line) throws IOException {
        String value = parser.getText();
        if (parser.isCurrentAlias()) {
            margin.fault(
                    line,
                    "",
                    "*" + value + " refers to another place, which is not supported here",
                    "put quotes around a value that begins with *");
            return null;
        }
        return new Node.Scalar(value == null ? "" : value.strip(), token == JsonToken.VALUE_NULL, line);
    }

    private void refuseTag(int line) throws IOException {
        if (parser.getTypeId() != null) {
            margin.fault(
                    line, "", "a value that begins with ! means something else to YAML", "put quotes around the value");
        }
    }

    private Node.Sequence sequence(int line, int depth) throws IOException {
        List<Node> items = new ArrayList<>();
        for (JsonToken token = next(); token != null && token != JsonToken.END_ARRAY; token = next()) {
            Node item = node(token, depth + 1);
            if (item != null) {
                items.add(item);
            }
        }
        return new Node.Sequence(items, line);
    }

    private Node.Mapping mapping(int line, int depth) throws IOException {
        List<Node.Pair> pairs = new ArrayList<>();
        Map<String, Integer> seen = new HashMap<>();
        for (JsonToken token = next(); token != null && token != JsonToken.END_OBJECT; token = next()) {
            String key = parser.currentName().strip();
            int keyLine = here();
            JsonToken start = next();
            Node value = start == null ? null : node(start, depth + 1);
            Integer earlier = seen.putIfAbsent(key, keyLine);
            if (earlier != null) {
                margin.fault(
                        keyLine, key, "this key stands here twice", "the one on line " + earlier + " counts: drop one");
            } else if (value != null) {
                pairs.add(new Node.Pair(key, keyLine, value));
            }
        }
        return new Node.Mapping(pairs, line, !broken);
    }

    private int here() {
        return parser.currentTokenLocation().getLineNr() + linesBefore;
    }

    private JsonToken next() {
        if (broken) {
            return null;
        }
        try {
            return parser.nextToken();
        } catch (IOException e) {
            broken = true;
            YamlComplaint.of(e, text).write(margin, linesBefore);
            return null;
        }
    }
}
