package throwline.report.sheet;

import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import throwline.report.NoFontException;

/**
 * Pages of a PDF file to draw on, y from the top in points. Text is embedded as text in one font that comes with the PDF
 * library; letters that this font lacks are drawn as shapes with a font of the machine. The same drawing gives the same
 * bytes.
 */
final class PdfCanvas implements AutoCloseable {

    private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    /** Width of the line that makes letters strong, over their size. */
    private static final double STRONG = 0.035;

    private final PDDocument document = new PDDocument();
    private final PDFont font;
    private final Size size;
    private final Map<String, Boolean> writable = new HashMap<>();
    private PDPageContentStream stream;

    PdfCanvas(Size size, String title) throws IOException {
        this.size = size;
        document.setDocumentId(1L);
        document.getDocumentInformation().setTitle(title);
        font = font(document);
        stream = page();
    }

    /** Without joined letters: the library looks for them anew in every text, and readers that search miss them. */
    private static PDFont font(PDDocument document) throws IOException {
        try (InputStream in = PDFont.class.getResourceAsStream(FONT)) {
            if (in == null) {
                throw new IllegalStateException("the font is missing from the jar");
            }
            TrueTypeFont file = new TTFParser().parse(new RandomAccessReadBuffer(in));
            file.setEnableGsub(false);
            document.registerTrueTypeFontForClosing(file);
            return PDType0Font.load(document, file, true);
        }
    }

    private PDPageContentStream page() throws IOException {
        PDPage page = new PDPage(new PDRectangle((float) size.width(), (float) size.height()));
        document.addPage(page);
        return new PDPageContentStream(document, page);
    }

    void newPage() throws IOException {
        stream.close();
        stream = page();
    }

    /** A line of text with its base line at y; strong letters are drawn with a line around them. */
    void text(String text, double x, double y, double points, boolean strong) throws IOException {
        if (text.isEmpty()) {
            return;
        }
        if (!isWritable(text)) {
            shapes(text, x, y, points);
            return;
        }
        stream.beginText();
        stream.setFont(font, (float) points);
        stream.setRenderingMode(strong ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
        stream.setLineWidth((float) (STRONG * points));
        stream.newLineAtOffset((float) x, down(y));
        stream.showText(text);
        stream.endText();
    }

    double width(String text, double points) throws IOException {
        if (text.isEmpty()) {
            return 0;
        }
        return isWritable(text)
                ? font.getStringWidth(text) * points / 1000
                : layout(text, points).getAdvance();
    }

    private boolean isWritable(String text) {
        return writable.computeIfAbsent(text, t -> {
            try {
                font.encode(t);
                return true;
            } catch (IllegalArgumentException | IOException e) {
                return false;
            }
        });
    }

    private static TextLayout layout(String text, double points) {
        try {
            Font of = new Font(Font.SANS_SERIF, Font.PLAIN, 1).deriveFont((float) points);
            return new TextLayout(text, of, new FontRenderContext(null, true, true));
        } catch (InternalError | LinkageError e) {
            throw new NoFontException(e);
        }
    }

    private void shapes(String text, double x, double y, double points) throws IOException {
        AffineTransform place = new AffineTransform(1, 0, 0, -1, x, down(y));
        Shape outline = layout(text, points).getOutline(place);
        double[] c = new double[6];
        double lastX = 0;
        double lastY = 0;
        for (PathIterator i = outline.getPathIterator(null); !i.isDone(); i.next()) {
            switch (i.currentSegment(c)) {
                case PathIterator.SEG_MOVETO -> stream.moveTo((float) c[0], (float) c[1]);
                case PathIterator.SEG_LINETO -> stream.lineTo((float) c[0], (float) c[1]);
                case PathIterator.SEG_QUADTO -> {
                    // The same curve with two control points.
                    stream.curveTo(
                            (float) (lastX + 2 * (c[0] - lastX) / 3),
                            (float) (lastY + 2 * (c[1] - lastY) / 3),
                            (float) (c[2] + 2 * (c[0] - c[2]) / 3),
                            (float) (c[3] + 2 * (c[1] - c[3]) / 3),
                            (float) c[2],
                            (float) c[3]);
                    c[0] = c[2];
                    c[1] = c[3];
                }
                case PathIterator.SEG_CUBICTO -> {
                    stream.curveTo((float) c[0], (float) c[1], (float) c[2], (float) c[3], (float) c[4], (float) c[5]);
                    c[0] = c[4];
                    c[1] = c[5];
                }
                default -> stream.closePath();
            }
            lastX = c[0];
            lastY = c[1];
        }
        stream.fill();
    }

    /** A straight line, 0 black to 1 white. */
    void line(double x0, double y0, double x1, double y1, double thick, double grey) throws IOException {
        stream.setStrokingColor((float) grey);
        stream.setLineWidth((float) thick);
        stream.moveTo((float) x0, down(y0));
        stream.lineTo((float) x1, down(y1));
        stream.stroke();
        stream.setStrokingColor(0f);
    }

    /** The outline of a rectangle, dashed where it is to be cut along. */
    void box(double x, double y, double width, double height, boolean dashed) throws IOException {
        stream.setLineWidth(0.6f);
        stream.setLineDashPattern(dashed ? new float[] {4, 3} : new float[0], 0);
        stream.addRect((float) x, down(y + height), (float) width, (float) height);
        stream.stroke();
        stream.setLineDashPattern(new float[0], 0);
    }

    /** A grey patch, 0 black to 1 white. */
    void patch(double x, double y, double width, double height, double grey) throws IOException {
        stream.setNonStrokingColor((float) grey);
        stream.addRect((float) x, down(y + height), (float) width, (float) height);
        stream.fill();
        stream.setNonStrokingColor(0f);
    }

    private float down(double y) {
        return (float) (size.height() - y);
    }

    byte[] bytes() throws IOException {
        stream.close();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        document.save(out);
        return out.toByteArray();
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
