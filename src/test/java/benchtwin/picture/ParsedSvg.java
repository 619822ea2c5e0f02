package benchtwin.picture;

import java.awt.Font;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** An SVG read back by the JDK's XML parser, which refuses whatever is not well formed. */
final class ParsedSvg {

    private final Element root;

    ParsedSvg(String svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setNamespaceAware(true);
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(new DefaultHandler());
            root = builder.parse(new InputSource(new StringReader(svg))).getDocumentElement();
        } catch (SAXException badXml) {
            throw new AssertionError("not well formed: " + badXml.getMessage(), badXml);
        } catch (Exception other) {
            throw new AssertionError(other);
        }
    }

    Element root() {
        return root;
    }

    double width() {
        return Double.parseDouble(root.getAttribute("width"));
    }

    double height() {
        return Double.parseDouble(root.getAttribute("height"));
    }

    /** What the children called so say, for instance of {@code title}. */
    String words(String element) {
        return all(root, element).map(Element::getTextContent).findFirst().orElse("");
    }

    /** All of one kind inside the parts of one name, in the order drawn. */
    List<Element> in(String part, String element) {
        return all(root, "g").filter(group -> group.getAttribute("class").equals(part))
            .flatMap(group -> all(group, element)).toList();
    }

    /** The one of its kind in the parts of one name. */
    Element only(String part, String element) {
        List<Element> found = in(part, element);
        if (found.size() != 1) {
            throw new AssertionError("%d of %s in %s, not 1".formatted(found.size(), element, part));
        }
        return found.get(0);
    }

    List<String> texts() {
        return all(root, "text").map(Element::getTextContent).toList();
    }

    List<Element> textElements() {
        return all(root, "text").toList();
    }

    static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    /** The axis read as a person reads it: the labels' numbers against the tick marks' places. */
    Ruler ruler(String part, boolean across) {
        String along = across ? "x" : "y";
        List<Double> places = new ArrayList<>();
        for (Element line : in(part, "line")) {
            boolean isTick = number(line, along + "1") == number(line, along + "2");
            if (isTick) {
                places.add(number(line, along + "1"));
            }
        }
        List<Double> values = in(part, "text").stream()
            .map(text -> Double.parseDouble(text.getTextContent().replace('−', '-'))).toList();
        return new Ruler(values, places);
    }

    /** What a text is written in, as far as size and weight go. */
    static Font font(Element text) {
        boolean bold = inherited(text, "font-weight").equals("bold");
        return new Font(Font.SANS_SERIF, bold ? Font.BOLD : Font.PLAIN,
            Integer.parseInt(inherited(text, "font-size").replace("px", "")));
    }

    private static String inherited(Element element, String attribute) {
        Element at = element;
        while (!at.hasAttribute(attribute)) {
            at = (Element) at.getParentNode();
        }
        return at.getAttribute(attribute);
    }

    private static Stream<Element> all(Element from, String name) {
        var found = from.getElementsByTagName(name);
        return IntStream.range(0, found.getLength()).mapToObj(i -> (Element) found.item(i));
    }

    /**
     * Tick values and where they are.
     * @param values what the labels say
     * @param px     where the marks are
     */
    record Ruler(List<Double> values, List<Double> px) {
        Ruler {
            if (values.size() < 2 || values.size() != px.size()) {
                throw new AssertionError("labels %s do not pair with ticks %s".formatted(values, px));
            }
        }

        /** A straight line through the first and last tick. */
        double place(double value) {
            int last = values.size() - 1;
            double part = (value - values.get(0)) / (values.get(last) - values.get(0));
            return px.get(0) + part * (px.get(last) - px.get(0));
        }
    }
}
