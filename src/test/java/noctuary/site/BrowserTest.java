package noctuary.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import noctuary.serve.SiteServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.print.PrintOptions;

/** The fixture's site in Chromium, opened as files; skipped where Chromium and its driver are not installed. */
@Tag("browser")
class BrowserTest {
    @TempDir
    static Path site;

    private static ChromeDriver browser;

    @BeforeAll
    static void open() throws IOException {
        browser = Chromium.open();
        FixtureSite.write(site, true, false);
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.quit();
        }
    }

    @Test
    void noPageBreaksItsPolicyOrFailsInTheScript() {
        for (String page : Chromium.KINDS) {
            visit(page);
            assertThat(browser.manage().logs().get(LogType.BROWSER).getAll())
                    .as(page)
                    .isEmpty();
            assertThat(script("return getComputedStyle(document.body).backgroundColor"))
                    .as(page)
                    .isEqualTo("rgb(18, 19, 20)");
        }
    }

    @Test
    void nothingScrollsSidewaysAt320PixelsEvenWithEverythingOpen() {
        Chromium.narrow(browser, 320);
        for (String page : Chromium.KINDS) {
            visit(page);
            script("document.querySelectorAll('details').forEach(d => d.open = true)");
            assertThat(script("return document.documentElement.scrollWidth <= document.documentElement.clientWidth"))
                    .as(page)
                    .isEqualTo(true);
        }
        Chromium.narrow(browser, 0);
    }

    @Test
    void theListNarrowsAndSorts() {
        visit("index.html");
        choose("narrow-rig", "Heron, the long tube");
        assertThat(shown()).containsExactly("Two nights on the dumbbell", "The crescent, longer tube, same terrace");
        assertThat(browser.findElement(By.cssSelector(".shown")).getText()).isEqualTo("2 of 5 entries");
        browser.findElement(By.id("narrow-to")).sendKeys("2025-06");
        assertThat(shown()).containsExactly("The crescent, longer tube, same terrace");
        browser.findElement(By.id("narrow-clear")).click();
        header("Star FWHM, arcsec").click();
        assertThat(shown())
                .startsWith("Two nights on the dumbbell", "The crescent, longer tube, same terrace")
                .last()
                .asString()
                .startsWith("Odd");
        header("Star FWHM, arcsec").click();
        assertThat(shown()).startsWith("The crescent with the short tube");
    }

    @Test
    void aThemeIsRememberedFromPageToPage() {
        visit("index.html");
        browser.findElement(By.id("theme-light")).click();
        visit("rigs/index.html");
        assertThat(script("return document.documentElement.dataset.theme")).isEqualTo("light");
        assertThat(browser.findElement(By.id("theme-light")).isSelected()).isTrue();
        browser.findElement(By.id("theme-dark")).click();
    }

    @Test
    void theKeyboardShowsTheStarsAndTurnsThePage() {
        visit("entries/long-tube/index.html");
        WebElement overlay = browser.findElement(By.cssSelector(".over-plate"));
        assertThat(overlay.isDisplayed()).isFalse();
        browser.findElement(By.tagName("body")).sendKeys("s");
        assertThat(overlay.isDisplayed()).isTrue();
        browser.findElement(By.tagName("body")).sendKeys(Keys.ARROW_LEFT);
        assertThat(browser.getCurrentUrl()).endsWith("entries/short-tube/index.html");
    }

    @Test
    void withoutTheScriptTheThemeAndTheStarsStillSwitch() throws IOException {
        Path page = site.resolve("entries/long-tube/index.html");
        Path plain = page.resolveSibling("plain.html");
        Files.writeString(plain, Files.readString(page).replaceAll("<script src=\"[^\"]*\"></script>", ""));
        visit("entries/long-tube/plain.html");
        browser.findElement(By.id("theme-red")).click();
        assertThat(script("return getComputedStyle(document.body).backgroundColor"))
                .isEqualTo("rgb(0, 0, 0)");
        browser.findElement(By.id("stack-stars")).click();
        assertThat(browser.findElement(By.cssSelector(".over-plate")).isDisplayed())
                .isTrue();
        assertThat(browser.findElements(By.cssSelector(".keys"))).isNotEmpty().noneMatch(WebElement::isDisplayed);
        Files.delete(plain);
    }

    @Test
    void theSheetForTheNextNightPrintsOnOnePage() {
        visit("lessons/sheet.html");
        String pdf = new String(
                Base64.getDecoder().decode(browser.print(new PrintOptions()).getContent()),
                StandardCharsets.ISO_8859_1);
        assertThat(Pattern.compile("/Type\\s*/Page\\b").matcher(pdf).results()).hasSize(1);
    }

    private static void visit(String page) {
        browser.get(site.resolve(page).toUri().toString());
    }

    private static Object script(String text) {
        return ((JavascriptExecutor) browser).executeScript(text);
    }

    private static void choose(String select, String value) {
        Stream.of(browser.findElement(By.id(select)))
                .flatMap(list -> list.findElements(By.tagName("option")).stream())
                .filter(option -> option.getText().equals(value))
                .forEach(WebElement::click);
    }

    private static WebElement header(String text) {
        return browser.findElements(By.cssSelector("#list th button")).stream()
                .filter(button -> button.getText().equals(text))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> shown() {
        return browser.findElements(By.cssSelector("#list tbody th")).stream()
                .filter(WebElement::isDisplayed)
                .map(WebElement::getText)
                .toList();
    }

    @Test
    void aServedPageLoadsAgainUnderItsContentPolicy() throws Exception {
        Path page = site.resolve("method/index.html");
        String before = Files.readString(page);
        try (SiteServer server = SiteServer.start(site, 0)) {
            browser.get(server.address() + "method/");
            Files.writeString(page, before.replaceFirst("<h1[^>]*>[^<]*", "<h1>Written again"));
            server.changed();
            browser.manage().timeouts().implicitlyWait(Duration.ofSeconds(20));
            assertThat(browser.findElements(By.xpath("//h1[.='Written again']")))
                    .hasSize(1);
            assertThat(browser.manage().logs().get(LogType.BROWSER).getAll())
                    .extracting(Object::toString)
                    .noneMatch(line -> line.contains("Content Security Policy"));
        } finally {
            browser.manage().timeouts().implicitlyWait(Duration.ZERO);
            Files.writeString(page, before);
        }
    }
}
