package throwline.report.chart;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import throwline.words.Words;

/** The legs of a landing as parts of a bar below each row: empty, full, striped and ruled, with a key above. */
final class LegBars extends Overlay {

    /** Points that the key above the rows takes. */
    static final int KEY = 23;

    private static final long serialVersionUID = 1;
    private static final double BELOW = 9;
    private static final double THICK = 8;
    private static final double STRIPE = 4;
    private static final double SAMPLE = 26;
    private static final double GAP = 18;
    private static final double ROW_MIDDLE = 0.62;

    private final transient List<Bar> bars;
    private final int rows;
    private final transient Words words;

    LegBars(List<Bar> bars, int rows, Words words) {
        this.bars = List.copyOf(bars);
        this.rows = rows;
        this.words = words;
    }

    /**
     * One landing.
     *
     * @param row number of its row
     * @param look its colour
     * @param roundOut where the round-out begins, m
     * @param level where it ends, m
     * @param touchdown where the wheels touch, m
     * @param stop where it stops, m
     */
    record Bar(int row, HouseStyle.Look look, double roundOut, double level, double touchdown, double stop) {}

    private enum Fill {
        EMPTY,
        FULL,
        STRIPED,
        RULED
    }

    @Override
    void paint(Graphics2D g2, Ink ink, Frame frame) {
        Rectangle2D area = frame.area();
        key(g2, ink, area);
        double start = frame.x(0);
        double metre = frame.x(1) - start;
        for (Bar bar : bars) {
            if (bar.row() >= rows) {
                continue;
            }
            double y = frame.y(bar.row() + ROW_MIDDLE) + BELOW;
            part(g2, bar.look(), Fill.EMPTY, start, start + bar.roundOut() * metre, y);
            part(g2, bar.look(), Fill.FULL, start + bar.roundOut() * metre, start + bar.level() * metre, y);
            part(g2, bar.look(), Fill.STRIPED, start + bar.level() * metre, start + bar.touchdown() * metre, y);
            part(g2, bar.look(), Fill.RULED, start + bar.touchdown() * metre, start + bar.stop() * metre, y);
        }
    }

    private void key(Graphics2D g2, Ink ink, Rectangle2D area) {
        double width = 0;
        for (Fill fill : Fill.values()) {
            width += SAMPLE + 6 + ink.width(words.say(text(fill)), HouseStyle.SMALL) + GAP;
        }
        // On a narrow chart the key begins below the names.
        double x = Math.min(area.getMinX(), area.getMaxX() - width + GAP);
        double y = area.getMinY() + KEY / 2.0 - THICK / 2;
        HouseStyle.Look look = HouseStyle.look(0);
        for (Fill fill : Fill.values()) {
            part(g2, look, fill, x, x + SAMPLE, y);
            String text = words.say(text(fill));
            x += SAMPLE + 6;
            ink.text(text, HouseStyle.SMALL, HouseStyle.INK, x, y + THICK / 2, Ink.Side.RIGHT);
            x += ink.width(text, HouseStyle.SMALL) + GAP;
        }
    }

    private static String text(Fill fill) {
        return switch (fill) {
            case EMPTY -> "chart.landing.approach";
            case FULL -> "chart.landing.round";
            case STRIPED -> "chart.landing.float";
            case RULED -> "chart.landing.roll";
        };
    }

    private static void part(Graphics2D g2, HouseStyle.Look look, Fill fill, double from, double to, double y) {
        if (to - from < 0.5) {
            return;
        }
        Rectangle2D box = new Rectangle2D.Double(from, y, to - from, THICK);
        g2.setPaint(HouseStyle.GROUND);
        g2.fill(box);
        g2.setPaint(look.color());
        g2.setStroke(HouseStyle.THIN);
        switch (fill) {
            case EMPTY -> {}
            case FULL -> g2.fill(box);
            case STRIPED -> {
                for (double x = from + STRIPE; x < to; x += STRIPE) {
                    g2.draw(new Line2D.Double(x, y, x, y + THICK));
                }
            }
            case RULED -> {
                g2.draw(new Line2D.Double(from, y + THICK / 3, to, y + THICK / 3));
                g2.draw(new Line2D.Double(from, y + 2 * THICK / 3, to, y + 2 * THICK / 3));
            }
        }
        g2.draw(box);
    }
}
