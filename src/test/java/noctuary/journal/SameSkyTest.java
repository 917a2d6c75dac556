package noctuary.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javax.imageio.ImageIO;
import noctuary.site.Chromium;
import noctuary.site.SiteHarm;
import noctuary.site.SiteLinks;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;

/** Six attempts on one target, from simulated frames to the page in Chromium, driven by the keyboard alone. */
@Tag("browser")
class SameSkyTest {
    private static final String AXE = """
            const done = arguments[arguments.length - 1];
            axe.run({runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']}).then(found => done(
                found.violations.flatMap(v => v.nodes.map(n => v.id + ' at ' + n.target.join(' ')))));
            """;

    /** Sum of all shifts so far, whatever input there was. */
    private static final String SHIFTS = """
            const done = arguments[arguments.length - 1];
            let sum = 0;
            new PerformanceObserver(list => list.getEntries().forEach(e => sum += e.hadRecentInput ? 0 : e.value))
                .observe({type: 'layout-shift', buffered: true});
            setTimeout(() => done(sum), 300);
            """;

    @TempDir
    static Path root;

    private static Path site;
    private static Path target;
    private static ChromeDriver browser;

    @BeforeAll
    static void render() throws Exception {
        browser = Chromium.open();
        SixAttempts.write(root);
        site = root.resolve("output");
        Rendering.render(root, site, Progress.SILENT);
        target = site.resolve("targets/m-27");
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.quit();
        }
    }

    @Test
    void everyAttemptIsLaidOrSaysWhyNot() throws Exception {
        Document page = Jsoup.parse(Files.readString(target.resolve("index.html")));
        assertThat(page.select(".sky-list li")).hasSize(6);
        assertThat(page.select("section:has(> #not-laid) li").text())
                .startsWith("Number elsewhere")
                .contains("better than chance");
        assertThat(page.select(".cuts tbody tr")).hasSize(6);
        assertThat(page.select(".cut-width").eachText()).hasSize(30);
        assertThat(SiteLinks.broken(site)).isEmpty();
        assertThat(SiteHarm.found(site)).isEmpty();
    }

    /** The brightest star of each ninth of the first picture, but the middle one with its glow, in all six. */
    @Test
    void theSameStarsStandInTheSamePlaces() throws Exception {
        List<BufferedImage> all = new ArrayList<>();
        for (int i = 1; i <= 6; i++) {
            all.add(ImageIO.read(
                    target.resolve("sky/attempt-" + i + "-alike-1600.jpg").toFile()));
        }
        int seen = 0;
        for (int[] star : peaks(all.get(0))) {
            double[] first = centre(all.get(0), star);
            for (BufferedImage picture : all) {
                double[] here = centre(picture, star);
                if (here[2] > 0) {
                    assertThat(Math.hypot(here[0] - first[0], here[1] - first[1]))
                            .isLessThan(0.4);
                    seen++;
                }
            }
        }
        assertThat(seen).isGreaterThan(42);
    }

    /** Centre of the light above the surroundings, and whether there is any picture at all. */
    private static double[] centre(BufferedImage image, int[] star) {
        double sum = 0;
        double x = 0;
        double y = 0;
        double edge = image.getRaster().getSample(star[0] - 7, star[1] - 7, 0) + 12;
        for (int dy = -7; dy <= 7; dy++) {
            for (int dx = -7; dx <= 7; dx++) {
                double light = Math.max(0, image.getRaster().getSample(star[0] + dx, star[1] + dy, 0) - edge);
                sum += light;
                x += light * dx;
                y += light * dy;
            }
        }
        return new double[] {x / sum, y / sum, edge > 13 ? 1 : 0};
    }

    /** Median grey of dark sky: the common stretch gives all the same background. */
    @Test
    void theCommonStretchGivesAllTheSameBackground() throws Exception {
        List<Double> greys = new ArrayList<>();
        for (int i = 1; i <= 6; i++) {
            BufferedImage picture = ImageIO.read(
                    target.resolve("sky/attempt-" + i + "-alike-1600.jpg").toFile());
            List<Integer> values = new ArrayList<>();
            for (int x = 100; x < picture.getWidth() - 100; x += 7) {
                values.add(picture.getRaster().getSample(x, 110, 0));
            }
            values.sort(null);
            greys.add((double) values.get(values.size() / 2));
        }
        assertThat(greys).allSatisfy(grey -> assertThat(grey).isCloseTo(greys.get(0), within(6.0)));
    }

    private static List<int[]> peaks(BufferedImage image) {
        List<int[]> peaks = new ArrayList<>();
        int w = image.getWidth() / 3;
        int h = image.getHeight() / 3;
        for (int n : new int[] {0, 1, 2, 3, 5, 6, 7, 8}) {
            int[] peak = {0, 0, -1};
            for (int y = n / 3 * h + 8; y < n / 3 * h + h - 8; y++) {
                for (int x = n % 3 * w + 8; x < n % 3 * w + w - 8; x++) {
                    int sum = 0;
                    for (int d = 0; d < 25; d++) {
                        sum += image.getRaster().getSample(x + d % 5 - 2, y + d / 5 - 2, 0);
                    }
                    peak = sum > peak[2] ? new int[] {x, y, sum} : peak;
                }
            }
            peaks.add(peak);
        }
        return peaks;
    }

    @ParameterizedTest
    @ValueSource(ints = {1440, 390})
    void theKeyboardMovesSeamBlinkAndLoupe(int width) throws Exception {
        open(target.resolve("index.html"), width);
        assertThat((Number) browser.executeAsyncScript(SHIFTS))
                .extracting(Number::doubleValue)
                .isEqualTo(0.0);

        tabTo(".seam-rule");
        String before = clip();
        press(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
        assertThat(clip()).isNotEqualTo(before).isEqualTo("inset(0px 0px 0px 53%)");

        tabTo(".blink");
        press(Keys.ENTER);
        assertThat(turns(4000))
                .as("turns in four seconds: three flashes a second would be 24")
                .isBetween(2L, 8L);
        press(Keys.ENTER);
        assertThat(turns(2000)).isZero();
        press(Keys.SPACE);
        assertThat(turns(2500)).isPositive();
        press(Keys.ESCAPE);
        assertThat(turns(2000)).isZero();
        assertThat(clip()).isEqualTo("inset(0px 0px 0px 53%)");

        browser.executeScript("document.activeElement.blur(); window.scrollTo(0, 0)");
        tabTo(".loupe-mark");
        String place = text(".loupe-where");
        press(Keys.ARROW_LEFT, Keys.ARROW_UP);
        assertThat(text(".loupe-where")).isNotEqualTo(place);
        assertThat(glass(0)).isEqualTo(glass(1));
        assertThat(browser.findElements(By.cssSelector(".loupe-glass img[src*='-tiles/0/']")))
                .as("tiles of full size, on demand")
                .isNotEmpty();
        assertThat((Number) browser.executeAsyncScript(SHIFTS))
                .extracting(Number::doubleValue)
                .isEqualTo(0.0);
    }

    @Test
    void otherAttemptsAndTheOwnStretchCanBeChosen() {
        open(target.resolve("index.html"), 1440);
        tabTo(".sky-choice select");
        press(Keys.ARROW_DOWN);
        assertThat(browser.findElement(By.cssSelector(".sky-side img")).getAttribute("src"))
                .contains("attempt-2-alike");
        tabTo("input[name$=light]");
        press(Keys.ARROW_RIGHT);
        assertThat(browser.findElement(By.cssSelector(".sky-side img")).getAttribute("src"))
                .contains("attempt-2-own");
    }

    @Test
    void aPictureOpensCloselyAndClosesByKeyboard() throws Exception {
        open(target.resolve("index.html"), 1440);
        tabTo(".attempts a[data-deep]");
        press(Keys.ENTER);
        assertThat(browser.findElements(By.cssSelector("dialog.closely[open]"))).hasSize(1);
        assertThat(axe()).isEmpty();
        actions("1");
        assertThat(text(".closely-bar output")).isEqualTo("100 %");
        assertThat(browser.findElements(By.cssSelector(".closely-stage img[src*='-tiles/0/']")))
                .isNotEmpty();
        Object tiles = shownTiles();
        press(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT, Keys.ARROW_DOWN);
        assertThat(shownTiles()).isNotEqualTo(tiles);
        press(Keys.ESCAPE);
        assertThat(browser.findElements(By.cssSelector("dialog.closely[open]"))).isEmpty();
        assertThat(browser.switchTo().activeElement().getAttribute("data-deep")).isNotNull();
    }

    @Test
    void withReducedMotionNothingBlinksByItself() {
        browser.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                java.util.Map.of(
                        "features", List.of(java.util.Map.of("name", "prefers-reduced-motion", "value", "reduce"))));
        open(target.resolve("index.html"), 1440);
        tabTo(".blink");
        press(Keys.ENTER);
        assertThat(turns(2500)).isZero();
        String shown = text(".sky-now");
        press(Keys.ENTER);
        assertThat(text(".sky-now")).isNotEqualTo(shown);
        browser.executeCdpCommand("Emulation.setEmulatedMedia", java.util.Map.of("features", List.of()));
    }

    @Test
    void withoutTheScriptThePicturesStandBesideEachOtherAndNothingIsDead() throws Exception {
        Path plain = target.resolve("plain.html");
        Files.writeString(
                plain,
                Files.readString(target.resolve("index.html")).replaceAll("<script src=\"[^\"]*\"></script>", ""));
        open(plain, 1440);
        List<WebElement> pictures = browser.findElements(By.cssSelector(".sky-two img"));
        assertThat(pictures).hasSize(2).allMatch(WebElement::isDisplayed);
        assertThat(pictures.get(1).getRect().x).isGreaterThan(pictures.get(0).getRect().x + 100);
        assertThat(browser.findElements(By.cssSelector("main button, main input, main select")))
                .noneMatch(WebElement::isDisplayed);
        assertThat(browser.findElements(By.cssSelector(".sky-list a")))
                .hasSize(12)
                .allMatch(WebElement::isDisplayed);
        Files.delete(plain);
    }

    @Test
    void starsTellTheirNumbersToTheKeyboardFromOneStop() {
        open(site.resolve("entries/attempt-1/index.html"), 1440);
        tabTo("svg.whiskers.wide g.point");
        String readout = ".drawing:has(svg.whiskers) .readout";
        String first = text(readout);
        assertThat(first).contains("FWHM", "ellipticity");
        press(Keys.ARROW_RIGHT);
        assertThat(text(readout)).contains("FWHM").isNotEqualTo(first);
        press(Keys.TAB);
        assertThat(browser.executeScript("return document.activeElement.closest('svg.whiskers') === null"))
                .isEqualTo(true);
        assertThat(text(readout)).startsWith("Point at a star");
    }

    private static void open(Path page, int width) {
        Chromium.narrow(browser, width == 1440 ? 0 : width);
        browser.get(page.toUri().toString());
    }

    private static List<?> axe() throws Exception {
        try (InputStream in = SameSkyTest.class.getResourceAsStream("/axe.min.js")) {
            browser.executeScript(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        }
        return (List<?>) browser.executeAsyncScript(AXE);
    }

    /** Goes on from stop to stop until one fits. */
    private static void tabTo(String selector) {
        for (int i = 0; i < 120; i++) {
            press(Keys.TAB);
            if (Boolean.TRUE.equals(
                    browser.executeScript("return document.activeElement.matches(arguments[0])", selector))) {
                return;
            }
        }
        throw new AssertionError("no stop at " + selector);
    }

    private static void press(CharSequence... keys) {
        for (CharSequence key : keys) {
            new Actions(browser).sendKeys(key).perform();
        }
    }

    private static void actions(String text) {
        new Actions(browser).sendKeys(text).perform();
    }

    private static String text(String selector) {
        return browser.findElement(By.cssSelector(selector)).getText();
    }

    private static String clip() {
        return (String) browser.executeScript("return document.querySelectorAll('.sky-side')[1].style.clipPath");
    }

    private static Object glass(int side) {
        return browser.executeScript(
                "return document.querySelectorAll('.loupe-glass')[arguments[0]].firstChild.style.transform", side);
    }

    private static Set<Object> shownTiles() {
        return new TreeSet<>((List<?>) browser.executeScript(
                "return Array.from(document.querySelectorAll('.closely-stage img'), i => i.src + i.style.transform)"));
    }

    /** How often the other picture came up. */
    private static long turns(int milliseconds) {
        return ((Number) browser.executeAsyncScript("""
                        const done = arguments[arguments.length - 1];
                        const side = document.querySelectorAll('.sky-side')[1];
                        let turns = 0;
                        const watch = new MutationObserver(() => turns += 1);
                        watch.observe(side, {attributes: true, attributeFilter: ['style']});
                        setTimeout(() => { watch.disconnect(); done(turns); }, arguments[0]);
                        """, milliseconds)).longValue();
    }
}
