package noctuary.draw;

/**
 * The two widths a chart is laid out for, so that letters keep their size on a telephone: user units of the view box,
 * of which one is about one CSS pixel where the form is shown.
 */
public enum Form {
    WIDE(720, 14),
    NARROW(360, 13);

    private final double width;
    private final double fontSize;

    Form(double width, double fontSize) {
        this.width = width;
        this.fontSize = fontSize;
    }

    double width() {
        return width;
    }

    double fontSize() {
        return fontSize;
    }

    /** The first value for the wide form, the second for the narrow one. */
    double pick(double wide, double narrow) {
        return this == WIDE ? wide : narrow;
    }
}
