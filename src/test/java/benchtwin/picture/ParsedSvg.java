package benchtwin.picture;

import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** An SVG read back by the JDK's XML parser, which refuses whatever is not well formed. */
final class ParsedSvg {

    private static final Pattern MOVED_DOWN = Pattern.compile("translate\\(0,\\s*(-?[\\d.]+)\\)");
    private static final Pattern CORNER = Pattern.compile("[ML]\\s*(-?[\\d.]+)[ ,](-?[\\d.]+)");

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
        return ruler(part, across, text -> Double.parseDouble(text.replace('−', '-')));
    }

    /** The same where the labels are not plain numbers. */
    Ruler ruler(String part, boolean across, ToDoubleFunction<String> number) {
        String along = across ? "x" : "y";
        List<Double> places = new ArrayList<>();
        for (Element line : in(part, "line")) {
            boolean isTick = number(line, along + "1") == number(line, along + "2");
            if (isTick) {
                places.add(number(line, along + "1"));
            }
        }
        List<Double> values = in(part, "text").stream()
            .map(text -> number.applyAsDouble(text.getTextContent())).toList();
        return new Ruler(values, places);
    }

    /** What a text is written in, as far as size and weight go. */
    static Font font(Element text) {
        boolean bold = inherited(text, "font-weight").equals("bold");
        return new Font(Font.SANS_SERIF, bold ? Font.BOLD : Font.PLAIN,
            Integer.parseInt(inherited(text, "font-size").replace("px", "")));
    }

    /** Where a text stands on the sheet: from the top of its capitals to the foot of its descenders, px. */
    static Rectangle2D box(Element text) {
        Font font = font(text);
        double height = 0.95 * font.getSize();
        return new Rectangle2D.Double(number(text, "x"), number(text, "y") + offsetY(text) - 0.75 * font.getSize(),
            TextBlock.widthPx(text.getTextContent(), font), height);
    }

    /** How far the groups around it move it down. */
    static double offsetY(Element element) {
        double down = 0;
        for (Node at = element; at instanceof Element group; at = at.getParentNode()) {
            Matcher move = MOVED_DOWN.matcher(group.getAttribute("transform"));
            if (move.matches()) {
                down += Double.parseDouble(move.group(1));
            } else if (group.hasAttribute("transform")) {
                throw new AssertionError("moved otherwise than down: " + group.getAttribute("transform"));
            }
        }
        return down;
    }

    /** The corners of a path of straight lines. */
    static List<double[]> corners(Element path) {
        List<double[]> corners = new ArrayList<>();
        Matcher matcher = CORNER.matcher(path.getAttribute("d"));
        while (matcher.find()) {
            corners.add(new double[] {Double.parseDouble(matcher.group(1)), Double.parseDouble(matcher.group(2))});
        }
        return corners;
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
