package noctuary.draw;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A drawing read back by the JDK's XML parser, which stops at the first thing that is not well-formed. */
final class Drawn {
    private static final DocumentBuilder BUILDER = builder();

    private final Element root;

    private Drawn(Element root) {
        this.root = root;
    }

    static Drawn of(String xml) {
        try {
            return new Drawn(
                    BUILDER.parse(new InputSource(new StringReader(xml))).getDocumentElement());
        } catch (SAXException | IOException e) {
            throw new AssertionError("not well-formed: " + e.getMessage() + "\n" + xml, e);
        }
    }

    private static DocumentBuilder builder() {
        try {
            var factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(null);
            return builder;
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException(e);
        }
    }

    Element root() {
        return root;
    }

    List<Element> elements(String name) {
        NodeList nodes = root.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    /** Elements of a name that carry a class. */
    List<Element> elements(String name, String className) {
        Predicate<Element> has =
                e -> List.of(e.getAttribute("class").split(" ")).contains(className);
        return elements(name).stream().filter(has).toList();
    }

    /** Texts in the order drawn. */
    List<String> texts() {
        return elements("text").stream().map(Element::getTextContent).toList();
    }

    /** What the pointer shows, in the order drawn; the drawing's own title is left out. */
    List<String> tips() {
        return elements("title").stream()
                .filter(title -> title.getParentNode() != root)
                .map(Element::getTextContent)
                .toList();
    }

    String description() {
        return elements("desc").get(0).getTextContent();
    }

    static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }
}
