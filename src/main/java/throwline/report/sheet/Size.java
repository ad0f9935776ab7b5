package throwline.report.sheet;

import java.util.Locale;

/**
 * Paper and what of it is used, in points of 1/72 inch.
 *
 * @param width of the paper
 * @param height of the paper
 * @param cardWidth width of the part that is used; the whole paper less its margin, or a card to be cut out
 * @param cardHeight height of the part that is used
 * @param cut true where the part is cut out along a line
 * @param font size of the letters
 */
public record Size(double width, double height, double cardWidth, double cardHeight, boolean cut, double font) {

    private static final double MARGIN = 30;
    private static final double MILLIMETRE = 72 / 25.4;

    /** A card for the tray of a transmitter: what most trays hold (common practice, no source). */
    private static final double CARD_WIDTH = 105 * MILLIMETRE;

    private static final double CARD_HEIGHT = 148 * MILLIMETRE;

    /** Kinds of paper. */
    public enum Paper {
        /** 210 by 297 mm (ISO 216). */
        A4(210 * MILLIMETRE, 297 * MILLIMETRE),
        /** 8.5 by 11 inches (ANSI Y14.1). */
        LETTER(8.5 * 72, 11 * 72.0);

        private final double width;
        private final double height;

        Paper(double width, double height) {
            this.width = width;
            this.height = height;
        }
    }

    /** A whole page with letters of this size. */
    static Size page(Paper paper, double font) {
        return new Size(paper.width, paper.height, paper.width - 2 * MARGIN, paper.height - 2 * MARGIN, false, font);
    }

    /** A card to be cut out of a page. */
    static Size card(Paper paper, double font) {
        return new Size(paper.width, paper.height, CARD_WIDTH, CARD_HEIGHT, true, font);
    }

    /** The same with a part as high as the paper. */
    Size highest() {
        return new Size(width, height, cardWidth, height - 2 * MARGIN, cut, font);
    }

    /** The same with a part of this height, where it is not higher. */
    Size atLeast(double least) {
        return new Size(width, height, cardWidth, Math.max(least, cardHeight), cut, font);
    }

    /** Left edge of the part that is used. */
    double left() {
        return cut ? MARGIN : (width - cardWidth) / 2;
    }

    /** Top edge of the part that is used, from the top of the paper. */
    double top() {
        return cut ? MARGIN : (height - cardHeight) / 2;
    }

    /** Width of the paper as a style sheet has it. */
    public String paperWidth() {
        return points(width);
    }

    /** Height of the paper as a style sheet has it. */
    public String paperHeight() {
        return points(height);
    }

    /** Width of the part that is used as a style sheet has it. */
    public String usedWidth() {
        return points(cardWidth);
    }

    /** Height of the part that is used as a style sheet has it. */
    public String usedHeight() {
        return points(cardHeight);
    }

    /** Size of the letters as a style sheet has it. */
    public String letters() {
        return points(font);
    }

    private static String points(double points) {
        return String.format(Locale.ROOT, "%.2fpt", points);
    }
}
