package noctuary.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import noctuary.entry.Settings;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * The feed against RFC 4287, and cards against the four properties that the Open Graph protocol requires of every page
 * (ogp.me, "Basic Metadata", from memory): title, type, address and image, the last for want of a picture left out on the
 * page of an entry that has none. Neither without the keeper's word.
 */
class FeedPagesTest {
    private static final String ATOM = "http://www.w3.org/2005/Atom";
    private static final String HOSTILE = "M. </name><link href='javascript:1'/>&";
    private static final URI WEB = URI.create("https://example.org/nights/");

    @TempDir
    static Path site;

    private static Element feed;

    @BeforeAll
    static void write() throws Exception {
        FixturePictures.write(site, false);
        SiteWriter.write(published("Nights above Averil\u0007", Optional.of(HOSTILE)), null, site);
        var factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        feed = factory.newDocumentBuilder()
                .parse(site.resolve("feed.xml").toFile())
                .getDocumentElement();
    }

    /** Section 4.1.1: exactly one id, title and updated; an author, because the entries have none; a link to itself. */
    @Test
    void theFeedHasWhatTheStandardRequires() {
        assertThat(feed.getNamespaceURI()).isEqualTo(ATOM);
        assertThat(feed.getLocalName()).isEqualTo("feed");
        assertThat(texts(feed, "id")).containsExactly(WEB.toString());
        assertThat(texts(feed, "title")).containsExactly("Nights above Averil\uFFFD");
        assertThat(texts(feed, "updated")).singleElement().satisfies(when -> OffsetDateTime.parse(when));
        assertThat(texts(children(feed, "author").get(0), "name")).containsExactly(HOSTILE);
        assertThat(children(feed, "link"))
                .extracting(link -> link.getAttribute("rel"), link -> link.getAttribute("href"))
                .contains(tuple("self", WEB + "feed.xml"));
    }

    /** Section 4.1.2: one id, title and updated each, and a link to the page where there is no content; ids are unique. */
    @Test
    void everyEntryHasWhatTheStandardRequires() {
        List<Element> entries = children(feed, "entry");
        assertThat(entries).hasSize(5);
        assertThat(entries).allSatisfy(entry -> {
            assertThat(texts(entry, "id"))
                    .singleElement()
                    .satisfies(id -> assertThat(URI.create(id).isAbsolute()).isTrue());
            assertThat(texts(entry, "title")).hasSize(1);
            assertThat(texts(entry, "updated")).singleElement().satisfies(when -> OffsetDateTime.parse(when));
            assertThat(children(entry, "link")).singleElement().satisfies(link -> {
                assertThat(link.getAttribute("rel")).isEqualTo("alternate");
                assertThat(site.resolve(WEB.relativize(URI.create(link.getAttribute("href")))
                                .getPath()))
                        .exists();
            });
        });
        assertThat(entries.stream().map(e -> texts(e, "id").get(0))).doesNotHaveDuplicates();
        assertThat(texts(feed, "updated").get(0))
                .isEqualTo(texts(entries.get(0), "updated").get(0));
        assertThat(entries.stream().map(e -> texts(e, "updated").get(0)))
                .isSortedAccordingTo(Comparator.reverseOrder());
    }

    @Test
    void everyPageCarriesItsCardAndItsAddress() throws IOException {
        for (Path file : HtmlValidity.pages(site)) {
            Document page = Jsoup.parse(Files.readString(file));
            String own = WEB + Address.encoded(site.relativize(file).toString().replace('\\', '/'));
            assertThat(page.select("link[rel=canonical]").attr("href")).isEqualTo(own);
            assertThat(property(page, "og:url")).isEqualTo(own);
            assertThat(property(page, "og:title")).isNotBlank();
            assertThat(property(page, "og:type")).isIn("article", "website");
            if (property(page, "og:image").isEmpty()) {
                assertThat(page.select("body.entry-one")).as(file.toString()).hasSize(1);
                assertThat(page.select(".plate")).as(file.toString()).isEmpty();
                continue;
            }
            String image =
                    WEB.relativize(URI.create(property(page, "og:image"))).getPath();
            assertThat(site.resolve(image)).as(file.toString()).exists();
            assertThat(property(page, "og:image:alt")).isNotBlank();
        }
        assertThat(HtmlValidity.problems(site)).isEmpty();
        assertThat(SiteHarm.found(site)).isEmpty();
    }

    @Test
    void withoutTheKeepersWordThereIsNeither(@TempDir Path home) throws IOException {
        FixtureSite.write(home, true, false);
        assertThat(home.resolve("feed.xml")).doesNotExist();
        for (Path file : HtmlValidity.pages(home)) {
            assertThat(Files.readString(file))
                    .as(file.toString())
                    .doesNotContain("og:", "canonical", "atom+xml", "example.org");
        }
    }

    private static SiteContent published(String title, Optional<String> keeper) {
        Settings own = Fixture.settings(false);
        return Fixture.content(
                new Settings(title, keeper, own.site(), own.rig(), Optional.of(WEB), own.archive(), own.publish()));
    }

    private static String property(Document page, String name) {
        return page.select("meta[property=" + name + "]").attr("content");
    }

    private static List<Element> children(Element parent, String name) {
        List<Element> found = new ArrayList<>();
        for (Node n = parent.getFirstChild(); n != null; n = n.getNextSibling()) {
            if (n instanceof Element e && e.getLocalName().equals(name) && ATOM.equals(e.getNamespaceURI())) {
                found.add(e);
            }
        }
        return found;
    }

    private static List<String> texts(Element parent, String name) {
        return children(parent, name).stream().map(Node::getTextContent).toList();
    }
}
