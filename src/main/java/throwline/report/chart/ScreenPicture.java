package throwline.report.chart;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import throwline.words.Words;

/** Picture for a window: it paints itself; what stands above and below it is text of the window. */
public final class ScreenPicture {

    private final Picture bare;
    private final String title;
    private final List<String> caption;

    private ScreenPicture(Picture bare, String title, List<String> caption) {
        this.bare = bare;
        this.title = title;
        this.caption = List.copyOf(caption);
    }

    static ScreenPicture of(Picture picture, Words words) {
        List<String> below = new ArrayList<>(picture.caption().holdsFor());
        Picture bare = PagePictures.bare(picture, "", below, words);
        return new ScreenPicture(bare, picture.caption().title(), below);
    }

    /** The question that it answers. */
    public String title() {
        return title;
    }

    /** What it holds for. */
    public List<String> caption() {
        return caption;
    }

    /** Width, points. */
    public int width() {
        return bare.width();
    }

    /** Height, points. */
    public int height() {
        return bare.height();
    }

    /** Paints it with its upper left corner at the origin, dark on white. */
    public void paint(Graphics2D g2) {
        PicturePainter.draw(bare, g2);
    }
}
