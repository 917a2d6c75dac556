package noctuary.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.chrome.ChromeDriver;

/**
 * Every page kind in every theme against the rules of axe-core for WCAG 2.2, levels A and AA, with everything that opens
 * open.
 */
@Tag("browser")
class AccessibilityTest {
    private static final String CHECK = """
            const done = arguments[arguments.length - 1];
            document.querySelectorAll('details').forEach(d => d.open = true);
            axe.run({runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']}).then(found => done(
                found.violations.flatMap(v => v.nodes.map(n =>
                    v.id + ' at ' + n.target.join(' ') + ': ' + n.failureSummary.replace(/\\s+/g, ' ')))));
            """;

    @TempDir
    static Path site;

    private static ChromeDriver browser;
    private static String axe;

    @BeforeAll
    static void open() throws IOException {
        browser = Chromium.open();
        FixtureSite.write(site, true, false);
        try (InputStream in = AccessibilityTest.class.getResourceAsStream("/axe.min.js")) {
            axe = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.quit();
        }
    }

    @ParameterizedTest
    @CsvSource({"dark,1440", "light,1440", "red,1440", "dark,320"})
    void noPageKindBreaksARule(String theme, int width) {
        Chromium.narrow(browser, width);
        for (String page : Chromium.KINDS) {
            browser.get(site.resolve(page).toUri() + "?theme=" + theme);
            browser.executeScript(axe);
            assertThat((List<?>) browser.executeAsyncScript(CHECK))
                    .as(page + " in the " + theme + " theme")
                    .isEmpty();
        }
    }
}
