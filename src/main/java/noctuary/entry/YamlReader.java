package noctuary.entry;

import java.util.List;

/** Front matter to a tree. A mistake costs the key at the left margin in which it stands; the others are read. */
final class YamlReader {
    /** Characters of front matter that are read at most. */
    static final int LONGEST = 65_536;

    private static final int MOST_MISTAKES = 20;

    private YamlReader() {}

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
        String rest = text;
        for (int mistakes = 0; mistakes < MOST_MISTAKES; mistakes++) {
            var tree = new YamlTree(rest, linesBefore);
            Node.Mapping root = tree.root();
            if (tree.complaint().isEmpty()) {
                tree.slips().forEach(slip -> margin.fault(slip.line(), slip.key(), slip.what(), slip.hint()));
                return new Node.Mapping(root.pairs(), root.line(), root.whole() && mistakes == 0);
            }
            YamlComplaint complaint = tree.complaint().get();
            YamlBlock block = YamlBlock.around(rest, complaint.line());
            margin.fault(
                    complaint.line() + linesBefore, block.key(complaint.line()), complaint.what(), complaint.hint());
            rest = block.without();
        }
        margin.fault(linesBefore + 1, "", "too many mistakes; no key was read", "mend these first, then look again");
        return new Node.Mapping(List.of(), linesBefore + 1, false);
    }
}
