package noctuary.cli;

/** Text from headers and notes made safe for a terminal: no control characters but line ends. */
final class Plain {
    private Plain() {}

    static String text(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        text.codePoints().forEach(c -> plain.appendCodePoint(c != '\n' && Character.isISOControl(c) ? '\uFFFD' : c));
        return plain.toString();
    }
}
