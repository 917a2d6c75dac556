package noctuary.entry;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.IOException;
import java.util.List;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/**
 * The parser's complaint in the keeper's words.
 *
 * @param line within the text, from 1
 */
record YamlComplaint(int line, String what, String hint) {
    private record Rule(String sign, String what, String hint) {}

    /** Unfinished things are told by the line on which they begin. */
    private static final List<String> UNFINISHED =
            List.of("simple key", "quoted scalar", "flow sequence", "flow mapping");

    private static final List<Rule> RULES = List.of(
            new Rule("alias", "a value begins with *, which means something else to YAML", "put quotes around it"),
            new Rule("anchor", "a value begins with &, which means something else to YAML", "put quotes around it"),
            new Rule("TAB", "a tab stands where only spaces may", "use spaces"),
            new Rule(
                    "mapping values are not allowed",
                    "a second colon in this line, or a line that is indented too far",
                    "put quotes around a value with a colon in it"),
            new Rule(
                    "cannot start any token",
                    "a value begins with a character that means something else to YAML",
                    "put quotes around it"),
            new Rule("unexpected end of stream", "a quote is opened and not closed", "close the quote"),
            new Rule("escape", "a backslash in double quotes means something else to YAML", "use single quotes"),
            new Rule("expected ',' or ']'", "a list in [ ] is not closed, or lacks a comma", "look for the missing ]"),
            new Rule("expected ',' or '}'", "keys in { } are not closed, or lack a comma", "look for the missing }"),
            new Rule("could not find expected ':'", "a line without a key", "write \"key: value\""),
            new Rule("<block end>", "this line does not fit the lines above", "indent keys of one group equally"),
            new Rule("special characters", "an invisible control character", "delete it and type the line anew"));
    private static final Rule ANY =
            new Rule("", "this line is not valid YAML", "write \"key: value\", with quotes if in doubt");

    static YamlComplaint of(IOException e) {
        String said = String.valueOf(e.getMessage());
        int line = 1;
        if (e.getCause() instanceof MarkedYAMLException marked && marked.getProblemMark() != null) {
            said = marked.getContext() + " " + marked.getProblem();
            line = line(marked) + 1;
        } else if (e instanceof JsonProcessingException json && json.getLocation() != null) {
            line = Math.max(1, json.getLocation().getLineNr());
        }
        String sign = said;
        Rule rule = RULES.stream()
                .filter(candidate -> sign.contains(candidate.sign()))
                .findFirst()
                .orElse(ANY);
        return new YamlComplaint(line, rule.what(), rule.hint());
    }

    private static int line(MarkedYAMLException marked) {
        String context = String.valueOf(marked.getContext());
        boolean unfinished =
                marked.getContextMark() != null && UNFINISHED.stream().anyMatch(context::contains);
        return (unfinished ? marked.getContextMark() : marked.getProblemMark()).getLine();
    }
}
