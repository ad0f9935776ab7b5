package throwline.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.Scrollable;

/** Components below each other, each as wide as there is room, that scroll up and down only. */
final class Column extends JPanel implements Scrollable {

    private static final long serialVersionUID = 1;

    private static final int STEP = 16;

    /**
     * @param gap between two of them, points
     */
    Column(int gap) {
        super(new Below(gap));
    }

    /** A pane that scrolls it. */
    JScrollPane scrolled() {
        JScrollPane scroll = new JScrollPane(this);
        scroll.setBorder(null);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        return scroll;
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return UIScale.scale(STEP);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }

    /** One below the other. */
    private record Below(int gap) implements LayoutManager {

        @Override
        public void addLayoutComponent(String name, Component component) {}

        @Override
        public void removeLayoutComponent(Component component) {}

        @Override
        public Dimension preferredLayoutSize(Container parent) {
            int width = 0;
            int height = 0;
            for (Component each : parent.getComponents()) {
                if (each.isVisible()) {
                    Dimension size = each.getPreferredSize();
                    width = Math.max(width, size.width);
                    height += size.height + UIScale.scale(gap);
                }
            }
            Insets insets = parent.getInsets();
            return new Dimension(width + insets.left + insets.right, height + insets.top + insets.bottom);
        }

        @Override
        public Dimension minimumLayoutSize(Container parent) {
            return new Dimension(1, 1);
        }

        @Override
        public void layoutContainer(Container parent) {
            Insets insets = parent.getInsets();
            int y = insets.top;
            for (Component each : parent.getComponents()) {
                if (each.isVisible()) {
                    int height = each.getPreferredSize().height;
                    each.setBounds(insets.left, y, parent.getWidth() - insets.left - insets.right, height);
                    y += height + UIScale.scale(gap);
                }
            }
        }
    }
}
