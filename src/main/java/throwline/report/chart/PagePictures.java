package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import throwline.report.document.PagePicture;
import throwline.words.Words;

/** Pictures made ready for a page: their lines of text go to the page, and what is left becomes one SVG element. */
final class PagePictures {

    /** More marks than this on an axis of a narrow chart run into each other. */
    private static final int MOST_MARKS = 7;

    /** Points that the scale up takes beside a plot. */
    private static final int SCALE = 8;

    private PagePictures() {}

    /**
     * All pictures, drawn on all processors: no two share anything that changes.
     *
     * @param prefix what the names inside a picture begin with, so that they are its own on the page
     * @param words the sentences
     * @throws throwline.report.NoFontException where the machine has no font
     */
    static List<PagePicture> of(List<Supplier<Picture>> pictures, String prefix, Words words) {
        Drawing.requireFont();
        return IntStream.range(0, pictures.size())
                .parallel()
                .mapToObj(i -> of(pictures.get(i).get(), prefix, words))
                .toList();
    }

    /** Pictures that are made already. */
    static List<PagePicture> ofReady(List<Picture> pictures, String prefix, Words words) {
        return of(
                pictures.stream()
                        .<Supplier<Picture>>map(picture -> () -> picture)
                        .toList(),
                prefix,
                words);
    }

    private static PagePicture of(Picture picture, String prefix, Words words) {
        Caption caption = picture.caption();
        List<String> below = new ArrayList<>(caption.holdsFor());
        Drawing.PageElement element = new Drawing(bare(picture, prefix, below, words)).element(caption.title());
        return new PagePicture(
                picture.name(), caption.title(), below, caption.proof(), element.description(), element.text());
    }

    /**
     * The picture without its lines of text, as narrow as a page needs it.
     *
     * @param below takes labels that are too long for it
     */
    static Picture bare(Picture picture, String prefix, List<String> below, Words words) {
        int width = Math.min(picture.width(), Layout.NARROW.width());
        double room = width - picture.room().getLeft() - picture.room().getRight() - SCALE;
        return new Picture(
                prefix + picture.name(),
                Caption.NONE,
                width,
                picture.height() - PicturePainter.heightOfLines(picture.caption()),
                narrow(picture.across(), room, below, words),
                picture.beside().map(axis -> narrow(axis, room, below, words)),
                picture.room(),
                picture.panels());
    }

    /** An axis with its marks apart; a label that is too long goes below the picture. */
    private static Axis narrow(Axis axis, double room, List<String> below, Words words) {
        Axis thinned = axis.visible() ? axis.thinned(MOST_MARKS) : axis;
        if (Brush.width(axis.label(), ChartStyle.TEXT) <= room) {
            return thinned;
        }
        below.add(words.say("chart.across", axis.label()));
        return thinned.withoutLabel();
    }
}
