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
import java.util.Optional;
import org.yaml.snakeyaml.LoaderOptions;

/** One walk through YAML text, up to the first mistake in its grammar. */
final class YamlTree {
    /** Something refused that does not end the walk; line of the file. */
    record Slip(int line, String key, String what, String hint) {}

    private static final int DEEPEST = 20;
    /** Characters of one value or key; what reads them may go over them more than once. */
    static final int LONGEST_VALUE = 4_000;

    private static final String TOO_LONG = "keep long text in the note below the second --- line";
    private static final YAMLFactory YAML = factory();

    private final YAMLParser parser;
    private final int linesBefore;
    private final List<Slip> slips = new ArrayList<>();
    private YamlComplaint complaint;

    /** @param linesBefore lines of the file above the text */
    YamlTree(String text, int linesBefore) {
        this.linesBefore = linesBefore;
        try {
            this.parser = YAML.createParser(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static YAMLFactory factory() {
        var options = new LoaderOptions();
        options.setCodePointLimit(2 * YamlReader.LONGEST);
        options.setNestingDepthLimit(2 * DEEPEST);
        var limits = StreamReadConstraints.builder()
                .maxNestingDepth(2 * DEEPEST)
                .maxDocumentLength(4L * YamlReader.LONGEST)
                .build();
        return YAMLFactory.builder()
                .loaderOptions(options)
                .streamReadConstraints(limits)
                .build();
    }

    Optional<YamlComplaint> complaint() {
        return Optional.ofNullable(complaint);
    }

    List<Slip> slips() {
        return List.copyOf(slips);
    }

    Node.Mapping root() {
        try {
            JsonToken first = next();
            Node node = first == null ? null : node(first, "", 0);
            if (node != null && next() != null) {
                slip("", "a second YAML document begins here", "keep all keys in one block");
            }
            return root(node);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Node.Mapping root(Node node) {
        if (node instanceof Node.Mapping mapping) {
            return mapping;
        }
        boolean blank = node == null || node instanceof Node.Scalar scalar && scalar.blank();
        if (!blank) {
            slips.add(new Slip(
                    node.line(), "", "keys with values are expected here", "write lines such as \"rig: heron\""));
        }
        return new Node.Mapping(List.of(), linesBefore + 1, blank);
    }

    /** Null where the value was refused. */
    private Node node(JsonToken token, String key, int depth) throws IOException {
        if (depth > DEEPEST) {
            int line = parser.currentTokenLocation().getLineNr();
            complaint = new YamlComplaint(
                    line, "keys are nested more than " + DEEPEST + " deep", "use fewer brackets and indents");
            return null;
        }
        if (parser.getTypeId() != null) {
            slip(key, "a value that begins with ! means something else to YAML", "put quotes around the value");
        }
        return switch (token) {
            case START_OBJECT -> mapping(here(), depth);
            case START_ARRAY -> sequence(here(), key, depth);
            default -> scalar(token, key);
        };
    }

    private Node scalar(JsonToken token, String key) throws IOException {
        String value = parser.getText() == null ? "" : parser.getText().strip();
        if (value.length() > LONGEST_VALUE) {
            slip(key, "this value is longer than " + LONGEST_VALUE + " characters", TOO_LONG);
            return null;
        }
        if (parser.isCurrentAlias()) {
            slip(
                    key,
                    "*" + Margin.shortened(value) + " refers to another place, which is not supported here",
                    "put quotes around a value that begins with *");
            return null;
        }
        return new Node.Scalar(value, token == JsonToken.VALUE_NULL || value.isEmpty(), here());
    }

    private Node.Sequence sequence(int line, String key, int depth) throws IOException {
        List<Node> items = new ArrayList<>();
        for (JsonToken token = next(); token != null && token != JsonToken.END_ARRAY; token = next()) {
            Node item = node(token, key, depth + 1);
            if (item != null) {
                items.add(item);
            }
        }
        return new Node.Sequence(items, line);
    }

    private Node.Mapping mapping(int line, int depth) throws IOException {
        List<Node.Pair> pairs = new ArrayList<>();
        Map<String, Integer> seen = new HashMap<>();
        boolean whole = true;
        for (JsonToken token = next(); token != null && token != JsonToken.END_OBJECT; token = next()) {
            String key = parser.currentName().strip();
            int keyLine = here();
            JsonToken start = next();
            Node value = start == null ? null : node(start, key, depth + 1);
            Integer earlier = seen.putIfAbsent(key, keyLine);
            if (key.length() > LONGEST_VALUE) {
                slips.add(new Slip(keyLine, key, "this key is longer than " + LONGEST_VALUE + " characters", TOO_LONG));
            } else if (earlier != null) {
                String hint = "the one on line " + earlier + " counts: drop one";
                slips.add(new Slip(keyLine, key, "this key stands here twice", hint));
            } else if (value != null) {
                pairs.add(new Node.Pair(key, keyLine, value));
            }
            whole &= value != null;
        }
        return new Node.Mapping(pairs, line, whole);
    }

    private void slip(String key, String what, String hint) {
        slips.add(new Slip(here(), key, what, hint));
    }

    private int here() {
        return parser.currentTokenLocation().getLineNr() + linesBefore;
    }

    private JsonToken next() {
        if (complaint != null) {
            return null;
        }
        try {
            return parser.nextToken();
        } catch (IOException e) {
            complaint = YamlComplaint.of(e);
            return null;
        }
    }
}
