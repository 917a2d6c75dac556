package noctuary.site;

import java.io.IOException;

/** A template that cannot make its page; the message names template and line, for whoever wrote it. */
public final class TemplateFault extends IOException {
    private static final long serialVersionUID = 1L;

    private final String template;
    private final int line;
    private final String what;

    TemplateFault(String template, int line, String what, Throwable cause) {
        super("template " + template + ", line " + line + ": " + what, cause);
        this.template = template;
        this.line = line;
        this.what = what;
    }

    /** File name from the template folder. */
    public String template() {
        return template;
    }

    /** From 1; 0 when not known. */
    public int line() {
        return line;
    }

    public String what() {
        return what;
    }
}
