package throwline.report.chart;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** The texts of an SVG picture and the room that each takes. */
record PictureText(String text, Rectangle2D room) {

    private static final Pattern MATRIX = Pattern.compile("matrix\\(([^)]*)\\)");
    private static final FontRenderContext FONTS = new FontRenderContext(new AffineTransform(), true, true);

    static Document parse(byte[] svg) {
        try {
            return DocumentBuilderFactory.newDefaultNSInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(svg));
        } catch (Exception e) {
            throw new AssertionError("not well-formed", e);
        }
    }

    static List<PictureText> of(byte[] svg) {
        NodeList nodes = parse(svg).getElementsByTagNameNS("*", "text");
        List<PictureText> texts = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            Element element = (Element) nodes.item(i);
            String text = element.getTextContent().strip();
            if (!text.isEmpty()) {
                texts.add(new PictureText(text, room(element, text)));
            }
        }
        return texts;
    }

    private static Rectangle2D room(Element element, String text) {
        float size = Float.parseFloat(inherited(element, "font-size:", "12").replace("px", ""));
        boolean bold = inherited(element, "font-weight:", "normal").equals("bold");
        Font font = new Font(Font.SANS_SERIF, bold ? Font.BOLD : Font.PLAIN, 1).deriveFont(size);
        Rectangle2D box = font.createGlyphVector(FONTS, text).getVisualBounds();
        AffineTransform place = transform(element);
        place.translate(Double.parseDouble(element.getAttribute("x")), Double.parseDouble(element.getAttribute("y")));
        return place.createTransformedShape(box).getBounds2D();
    }

    private static String inherited(Node node, String property, String otherwise) {
        for (Node at = node; at instanceof Element element; at = at.getParentNode()) {
            for (String part : element.getAttribute("style").split(";", -1)) {
                if (part.strip().startsWith(property)) {
                    return part.strip().substring(property.length()).strip();
                }
            }
        }
        return otherwise;
    }

    private static AffineTransform transform(Node node) {
        AffineTransform whole = new AffineTransform();
        for (Node at = node; at instanceof Element element; at = at.getParentNode()) {
            String text = element.getAttribute("transform");
            if (text.isEmpty()) {
                continue;
            }
            Matcher matcher = MATRIX.matcher(text);
            if (!matcher.matches()) {
                throw new AssertionError("an unexpected kind of transform: " + text);
            }
            double[] m = new double[6];
            String[] numbers = matcher.group(1).split(",", -1);
            for (int i = 0; i < 6; i++) {
                m[i] = Double.parseDouble(numbers[i]);
            }
            whole.preConcatenate(new AffineTransform(m));
        }
        return whole;
    }
}
