package noctuary.draw;

/**
 * A drawing as SVG text for an HTML page: title and description inside, no scripts and no style attributes, colours by
 * class from {@code charts.css}. The same chart gives the same bytes.
 */
public interface Chart {
    /**
     * One drawing.
     *
     * @param id unique on its page; the ids inside begin with it
     */
    String svg(String id, Form form);

    /** The wide and the narrow drawing in one {@code div}; the style sheet shows the one that fits its container. */
    default String both(String id) {
        return "<div class=\"chart-forms\">\n" + svg(id + "-w", Form.WIDE) + svg(id + "-n", Form.NARROW) + "</div>\n";
    }
}
