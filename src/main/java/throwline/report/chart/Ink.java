package throwline.report.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Draws text and marks at places given in points. */
final class Ink {

    private static final String CUT = "...";

    private final Graphics2D g2;

    Ink(Graphics2D g2) {
        this.g2 = g2;
    }

    /** Where text sits against its place. */
    enum Side {
        LEFT,
        MIDDLE,
        RIGHT
    }

    /** One line of text; {@code side} tells where the text lies seen from x. The line's middle is at y. */
    void text(String text, Font font, Color color, double x, double y, Side side) {
        FontMetrics metrics = g2.getFontMetrics(font);
        double width = metrics.stringWidth(text);
        double left =
                switch (side) {
                    case LEFT -> x - width;
                    case MIDDLE -> x - width / 2;
                    case RIGHT -> x;
                };
        g2.setFont(font);
        g2.setPaint(color);
        g2.drawString(text, (float) left, (float) (y + (metrics.getAscent() - metrics.getDescent()) / 2.0));
    }

    /** One line of text on a patch of the ground, so that lines below it do not disturb. */
    void textOnGround(String text, Font font, Color color, double x, double y, Side side) {
        double width = width(text, font);
        double left = side == Side.LEFT ? x - width : side == Side.MIDDLE ? x - width / 2 : x;
        double height = height(font);
        g2.setPaint(HouseStyle.HALO);
        g2.fill(new Rectangle2D.Double(left - 2, y - height / 2, width + 4, height));
        text(text, font, color, x, y, side);
    }

    double width(String text, Font font) {
        return g2.getFontMetrics(font).stringWidth(text);
    }

    double height(Font font) {
        FontMetrics metrics = g2.getFontMetrics(font);
        return metrics.getAscent() + metrics.getDescent();
    }

    /** Text broken at blanks to fit a width, in so many lines at most; what does not fit is cut and shown as cut. */
    List<String> wrapped(String text, Font font, double width, int most) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(longer, font) <= width || line.isEmpty()) {
                line = longer;
            } else {
                lines.add(line);
                line = word;
            }
        }
        lines.add(line);
        boolean tooMany = lines.size() > most;
        List<String> kept = new ArrayList<>(lines.subList(0, Math.min(most, lines.size())));
        for (int i = 0; i < kept.size(); i++) {
            kept.set(i, fitted(kept.get(i), font, width, tooMany && i == kept.size() - 1));
        }
        return kept;
    }

    /** A mark with its middle at a place. */
    void mark(HouseStyle.Look look, double x, double y, boolean filled) {
        Shape mark = AffineTransform.getTranslateInstance(x, y).createTransformedShape(look.mark());
        g2.setPaint(filled ? look.color() : HouseStyle.GROUND);
        g2.fill(mark);
        g2.setPaint(look.color());
        g2.setStroke(look.whisker());
        g2.draw(mark);
    }

    private String fitted(String text, Font font, double width, boolean cut) {
        if (!cut && width(text, font) <= width) {
            return text;
        }
        String shorter = text;
        while (!shorter.isEmpty() && width(shorter + CUT, font) > width) {
            shorter = shorter.substring(0, shorter.length() - 1);
        }
        return shorter.strip() + CUT;
    }
}
