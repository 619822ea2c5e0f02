package benchtwin.picture;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.io.StringWriter;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.svggen.DefaultStyleHandler;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A sheet that becomes SVG text. Every part is a {@code g} whose class is the part's name. */
final class SvgSheet implements Sheet {

    private static final String SVG = "http://www.w3.org/2000/svg";

    private final SVGGraphics2D graphics;
    private final Element root;

    private SvgSheet(Picture picture, int heightPx) {
        Document document = emptyDocument();
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment(null);
        context.setPrecision(3);
        context.setStyleHandler(new SystemFonts());
        graphics = new SVGGraphics2D(context, false);
        // the axes put this hint back as they found it, and Batik takes no null for it
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        root = graphics.getRoot(document.getDocumentElement());
        while (root.hasChildNodes()) {
            root.removeChild(root.getFirstChild());
        }
        root.setAttribute("viewBox", "0 0 " + Look.WIDTH_PX + " " + heightPx);
        root.setAttribute("width", Integer.toString(Look.WIDTH_PX));
        root.setAttribute("height", Integer.toString(heightPx));
        root.setAttribute("role", "img");
        root.setAttribute("aria-labelledby", "picture-title");
        root.setAttribute("aria-describedby", "picture-table");
        words("title", "picture-title", picture.title());
        words("desc", "picture-table", picture.inWords());
    }

    static String text(Picture picture, Drawing drawing) {
        SvgSheet sheet = new SvgSheet(picture, drawing.heightPx());
        sheet.part("paper", g -> Marks.paper(g, drawing.heightPx()));
        drawing.draw(sheet);
        return sheet.written();
    }

    @Override
    public void part(String name, Consumer<Graphics2D> part) {
        part.accept(graphics);
        Element group = graphics.getTopLevelGroup(false);
        group.setAttribute("class", name);
        root.appendChild(group);
    }

    private void words(String element, String id, String text) {
        Element child = root.getOwnerDocument().createElementNS(SVG, element);
        child.setAttribute("id", id);
        child.setTextContent(text);
        root.appendChild(child);
    }

    private String written() {
        try {
            Transformer writer = TransformerFactory.newDefaultInstance().newTransformer();
            writer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
            writer.setOutputProperty(OutputKeys.ENCODING, "UTF-8");
            StringWriter text = new StringWriter();
            writer.transform(new DOMSource(root), new StreamResult(text));
            return text.toString();
        } catch (TransformerException impossible) {
            throw new IllegalStateException("a drawn picture could not be written as text", impossible);
        }
    }

    private static Document emptyDocument() {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setNamespaceAware(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            return factory.newDocumentBuilder().getDOMImplementation().createDocument(SVG, "svg", null);
        } catch (ParserConfigurationException impossible) {
            throw new IllegalStateException("this Java has no XML support", impossible);
        }
    }

    /** Asks, once and for all text, for the reader's system fonts where Java's logical font was named. */
    private static final class SystemFonts extends DefaultStyleHandler {
        @Override
        @SuppressWarnings({"rawtypes", "unchecked"})   // the library's signature is older than generics
        public void setStyle(Element element, Map style, SVGGeneratorContext context) {
            Map<Object, Object> ours = new HashMap<>(style);
            if (element.getTagName().equals("svg")) {
                ours.put("font-family", Look.FONT_STACK);
            } else {
                ours.remove("font-family");
            }
            super.setStyle(element, ours, context);
        }
    }
}
