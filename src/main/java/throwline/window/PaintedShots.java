package throwline.window;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Pictures that were painted last. One that has not changed is given again as the same object, which the screen need not
 * paint anew: numbers that come later change few pictures.
 */
final class PaintedShots {

    private List<HandView.Shot> last = List.of();

    /** These pictures, each replaced by the one painted before it where no pixel differs. For any thread. */
    synchronized List<HandView.Shot> kept(List<HandView.Shot> fresh) {
        List<HandView.Shot> kept = new ArrayList<>();
        for (int i = 0; i < fresh.size(); i++) {
            HandView.Shot shot = fresh.get(i);
            boolean same = i < last.size() && isSame(last.get(i), shot);
            kept.add(same ? last.get(i) : shot);
        }
        last = List.copyOf(kept);
        return last;
    }

    private static boolean isSame(HandView.Shot one, HandView.Shot other) {
        BufferedImage a = one.image();
        BufferedImage b = other.image();
        return one.title().equals(other.title())
                && one.caption().equals(other.caption())
                && one.scale() == other.scale()
                && a.getWidth() == b.getWidth()
                && a.getHeight() == b.getHeight()
                && Arrays.equals(pixels(a), pixels(b));
    }

    /** A copy, so that the image may still be kept beside the screen by the system. */
    private static int[] pixels(BufferedImage image) {
        int width = image.getWidth();
        int height = image.getHeight();
        return (int[]) image.getRaster().getDataElements(0, 0, width, height, null);
    }
}
