package throwline.report.chart;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import throwline.report.NoFontException;

/** Picture drawn as SVG with text as text, or as PNG at double size. */
final class Drawing {

    private static final int SCALE = 2;
    private static final int DECIMALS = 2;

    /** On a page a point is about a picture element of a screen: one decimal keeps the page small. */
    private static final int PAGE_DECIMALS = 1;

    private static final String SVG = "http://www.w3.org/2000/svg";
    /** The one name that the drawing library gives to every picture. */
    private static final String SHARED = "genericDefs";

    private static final String DECLARATION = "<\\?xml[^>]*>\\s*";
    /** Blanks that the writer puts before the end of a tag. */
    private static final String BETWEEN = "\\s+(/?>)";

    private static final String DOCTYPE = "(?s)<!DOCTYPE[^>]*>\\s*";

    private final Picture picture;

    Drawing(Picture picture) {
        this.picture = picture;
    }

    /**
     * Makes sure that text can be drawn.
     *
     * @throws NoFontException where the machine has no font: Java reports that as an internal error, on its first use of
     *     a font, in different ways by version
     */
    static void requireFont() {
        try {
            new TextLayout("x", ChartStyle.TEXT, new FontRenderContext(null, true, true)).getAdvance();
        } catch (InternalError | LinkageError | RuntimeException e) {
            throw new NoFontException(e);
        }
    }

    /** The picture as an SVG file that stands alone. */
    byte[] svg() {
        Drawn drawn = drawn(DECIMALS);
        Element root = drawn.root();
        root.setAttribute("role", "img");
        first(root, "title", "", picture.caption().title());
        // The declaration names a file outside, which a reader might go and fetch.
        return text(drawn).replaceFirst(DOCTYPE, "").getBytes(StandardCharsets.UTF_8);
    }

    /**
     * A picture as an element of a page.
     *
     * @param text the element
     * @param description what is written in the picture, numbers of axes left out
     */
    record PageElement(String text, String description) {}

    /** The picture as one element of a page, as wide as the page gives it room, with a title and what is written in it. */
    PageElement element(String title) {
        Drawn drawn = drawn(PAGE_DECIMALS);
        Element root = drawn.root();
        String description = written(root);
        root.removeAttribute("width");
        root.removeAttribute("height");
        root.setAttribute("role", "img");
        String id = picture.name();
        NodeList definitions = root.getElementsByTagName("defs");
        for (int i = 0; i < definitions.getLength(); i++) {
            Element shared = (Element) definitions.item(i);
            if (shared.getAttribute("id").equals(SHARED)) {
                shared.setAttribute("id", id + "-" + SHARED);
            }
        }
        root.setAttribute("aria-labelledby", id + "-title " + id + "-desc");
        first(root, "desc", id + "-desc", description);
        first(root, "title", id + "-title", title);
        String text = text(drawn)
                .replaceFirst(DECLARATION, "")
                .replaceFirst(DOCTYPE, "")
                .replaceAll(BETWEEN, "$1")
                .replace(" xml:space=\"preserve\"", "");
        return new PageElement(text.strip(), description);
    }

    private record Drawn(SVGGraphics2D g2, Element root) {}

    private Drawn drawn(int decimals) {
        Document document = document();
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setPrecision(decimals);
        context.setComment(null);
        context.setIDGenerator(new NamedIds(picture.name() + "-"));
        SVGGraphics2D g2 = new SVGGraphics2D(context, false);
        g2.setSVGCanvasSize(new Dimension(picture.width(), picture.height()));
        draw(g2);
        Element root = g2.getRoot();
        root.setAttribute("viewBox", "0 0 " + picture.width() + " " + picture.height());
        return new Drawn(g2, root);
    }

    private static void first(Element root, String tag, String id, String text) {
        Element element = root.getOwnerDocument().createElementNS(SVG, tag);
        element.setTextContent(text);
        if (!id.isEmpty()) {
            element.setAttribute("id", id);
        }
        root.insertBefore(element, root.getFirstChild());
    }

    /** What is written in a picture, in its order; numbers alone are those of the axes. */
    private static String written(Element root) {
        NodeList texts = root.getElementsByTagName("text");
        Set<String> lines = new LinkedHashSet<>();
        for (int i = 0; i < texts.getLength(); i++) {
            String line = texts.item(i).getTextContent().strip();
            if (!line.matches("[-+0-9.]*")) {
                lines.add(line);
            }
        }
        return String.join("; ", lines);
    }

    private static String text(Drawn drawn) {
        StringWriter text = new StringWriter();
        try {
            drawn.g2().stream(drawn.root(), text, true, false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /** The picture as a PNG file, painted on this canvas part by part. */
    byte[] png(Canvas canvas) {
        int width = SCALE * picture.width();
        int height = SCALE * picture.height();
        return PngFile.of(width, height, Canvas.MOST_LINES, (from, lines) -> part(canvas.part(width, lines), from));
    }

    private BufferedImage part(BufferedImage image, int from) {
        Graphics2D g2 = image.createGraphics();
        g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g2.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g2.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g2.translate(0, -from);
        g2.scale(SCALE, SCALE);
        draw(g2);
        g2.dispose();
        return image;
    }

    private void draw(Graphics2D g2) {
        PicturePainter.draw(picture, g2);
    }

    private static Document document() {
        try {
            return DocumentBuilderFactory.newDefaultNSInstance()
                    .newDocumentBuilder()
                    .getDOMImplementation()
                    .createDocument(SVG, "svg", null);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Names inside a picture that stay its own when several share a page. */
    private static final class NamedIds extends SVGIDGenerator {
        private final String prefix;

        NamedIds(String prefix) {
            this.prefix = prefix;
        }

        @Override
        public String generateID(String kind) {
            return super.generateID(prefix + kind);
        }
    }
}
