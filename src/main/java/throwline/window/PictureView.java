package throwline.window;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.Optional;
import javax.accessibility.AccessibleRole;

/** A picture that is painted already. */
final class PictureView extends Drawn {

    private static final long serialVersionUID = 1;

    private transient Optional<HandView.Shot> shot = Optional.empty();

    PictureView() {
        super(AccessibleRole.ICON);
    }

    void show(HandView.Shot other) {
        if (shot.equals(Optional.of(other))) {
            return;
        }
        boolean sized = size(shot).equals(size(Optional.of(other)));
        shot = Optional.of(other);
        getAccessibleContext().setAccessibleName(other.title());
        getAccessibleContext().setAccessibleDescription(String.join(" ", other.caption()));
        if (!sized) {
            revalidate();
        }
        repaint();
    }

    private static Dimension size(Optional<HandView.Shot> of) {
        return of.map(s -> new Dimension((int) Math.round(s.image().getWidth() / s.scale()), (int)
                        Math.round(s.image().getHeight() / s.scale())))
                .orElse(new Dimension(1, 1));
    }

    @Override
    public Dimension getPreferredSize() {
        return size(shot);
    }

    @Override
    public Dimension getMaximumSize() {
        return getPreferredSize();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        shot.ifPresent(s -> {
            Graphics2D g2 = (Graphics2D) graphics.create();
            g2.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            g2.scale(1 / s.scale(), 1 / s.scale());
            g2.drawImage(s.image(), 0, 0, null);
            g2.dispose();
        });
    }
}
