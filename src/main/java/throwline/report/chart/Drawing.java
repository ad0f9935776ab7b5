package throwline.report.chart;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import throwline.report.NoFontException;

/** Draws a picture as SVG with text as text, and as PNG at double size. */
final class Drawing {

    private static final int SCALE = 2;
    private static final int DECIMALS = 2;
    private static final String SVG = "http://www.w3.org/2000/svg";

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
            new TextLayout("x", HouseStyle.TEXT, new FontRenderContext(null, true, true)).getAdvance();
        } catch (InternalError | LinkageError | RuntimeException e) {
            throw new NoFontException(e);
        }
    }

    /** The picture as an SVG file that stands alone. */
    byte[] svg() {
        Document document = document();
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setPrecision(DECIMALS);
        context.setComment(null);
        context.setIDGenerator(new NamedIds(picture.name() + "-"));
        SVGGraphics2D g2 = new SVGGraphics2D(context, false);
        g2.setSVGCanvasSize(new Dimension(picture.width(), picture.height()));
        draw(g2);
        Element root = g2.getRoot();
        root.setAttribute("viewBox", "0 0 " + picture.width() + " " + picture.height());
        root.setAttribute("role", "img");
        Element title = document.createElementNS(SVG, "title");
        title.setTextContent(picture.description());
        root.insertBefore(title, root.getFirstChild());
        StringWriter text = new StringWriter();
        try {
            g2.stream(root, text, true, false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        // The declaration names a file outside, which a reader might go and fetch.
        return text.toString().replaceFirst("(?s)<!DOCTYPE[^>]*>\\s*", "").getBytes(StandardCharsets.UTF_8);
    }

    /** The picture as a PNG file, painted on this canvas. */
    byte[] png(Canvas canvas) {
        BufferedImage image = canvas.part(SCALE * picture.width(), SCALE * picture.height());
        Graphics2D g2 = image.createGraphics();
        g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g2.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g2.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g2.scale(SCALE, SCALE);
        draw(g2);
        g2.dispose();
        return PngFile.of(image);
    }

    private void draw(Graphics2D g2) {
        picture.chart().draw(g2, new Rectangle2D.Double(0, 0, picture.width(), picture.height()));
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
