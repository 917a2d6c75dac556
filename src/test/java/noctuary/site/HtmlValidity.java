package noctuary.site;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import nu.validator.validation.SimpleDocumentValidator;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/**
 * The HTML of a site against the HTML standard, by the checker of the W3C and WHATWG (nu.validator), within this
 * process and without network. Any test may call it on any folder.
 */
public final class HtmlValidity {
    private static final String SCHEMA = "http://s.validator.nu/html5-rdfalite.rnc";

    /** The checker does not resolve relative references, so it cannot see that they are {@code 'self'}. */
    private static final Pattern RELATIVE_AND_SELF = Pattern.compile(
            "Resource violates Content Security Policy .*: [a-z ]+ “(?![a-zA-Z][a-zA-Z+.-]*:|//)[^”]*” blocked by .*");

    private HtmlValidity() {}

    /** Every error and warning of every page below the folder, as {@code page:line: message}. */
    public static List<String> problems(Path site) throws IOException {
        Complaints complaints = new Complaints();
        SimpleDocumentValidator validator = validator(complaints);
        for (Path page : pages(site)) {
            complaints.page = site.relativize(page).toString();
            check(validator, page, complaints);
        }
        return complaints.found;
    }

    static List<Path> pages(Path site) throws IOException {
        try (Stream<Path> files = Files.walk(site)) {
            return files.filter(file -> file.toString().endsWith(".html"))
                    .sorted()
                    .toList();
        }
    }

    /** Reading the schema takes most of the time, so it is done once. */
    private static SimpleDocumentValidator validator(Complaints complaints) throws IOException {
        try {
            SimpleDocumentValidator validator = new SimpleDocumentValidator(true, false, true);
            validator.setUpMainSchema(SCHEMA, complaints);
            return validator;
        } catch (Exception e) {
            throw new IOException("the checker's schema cannot be read", e);
        }
    }

    private static void check(SimpleDocumentValidator validator, Path page, Complaints complaints) throws IOException {
        try (InputStream in = Files.newInputStream(page)) {
            validator.setUpValidatorAndParsers(complaints, true, false);
            InputSource source = new InputSource(in);
            source.setEncoding("UTF-8");
            validator.checkHtmlInputSource(source);
        } catch (SAXException e) {
            throw new IOException("the checker failed on " + page, e);
        }
    }

    private static final class Complaints implements ErrorHandler {
        private final List<String> found = new ArrayList<>();
        private String page;

        @Override
        public void warning(SAXParseException problem) {
            error(problem);
        }

        @Override
        public void error(SAXParseException problem) {
            if (RELATIVE_AND_SELF.matcher(problem.getMessage()).matches()) {
                return;
            }
            found.add(page + ":" + problem.getLineNumber() + ": " + problem.getMessage());
        }

        @Override
        public void fatalError(SAXParseException problem) {
            error(problem);
        }
    }
}
