package throwline.window;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Insets;
import java.awt.event.ActionListener;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** Components beside each other. */
final class Line extends JPanel {

    private static final long serialVersionUID = 1;

    private static final int GAP = 6;

    private final transient Desk desk;

    Line(Desk desk) {
        this.desk = desk;
        setLayout(new BoxLayout(this, BoxLayout.X_AXIS));
        setOpaque(false);
    }

    Line with(JComponent component) {
        add(component);
        add(Box.createHorizontalStrut(GAP));
        return this;
    }

    /** A component with its name before it. */
    Line named(String key, JComponent component) {
        JLabel label = new JLabel(desk.say(key));
        label.setLabelFor(component);
        component.getAccessibleContext().setAccessibleName(desk.say(key));
        component.setMaximumSize(component.getPreferredSize());
        return with(label).with(component);
    }

    Line label(String key, Object... arguments) {
        return with(new JLabel(desk.say(key, arguments)));
    }

    Line button(String key, ActionListener action) {
        return with(button(desk, key, action));
    }

    /** A button that takes little room. */
    Line small(String key, ActionListener action) {
        return with(tight(button(desk, key, action)));
    }

    static JButton tight(JButton button) {
        button.setMargin(new Insets(2, 5, 2, 5));
        button.putClientProperty(FlatClientProperties.MINIMUM_WIDTH, 0);
        return button;
    }

    /** What comes next stands at the far end. */
    Line far() {
        add(Box.createHorizontalGlue());
        return this;
    }

    /** A button; its tip is {@code KEY.tip} where there is one. */
    static JButton button(Desk desk, String key, ActionListener action) {
        JButton button = new JButton(desk.say(key));
        button.setName(key);
        if (desk.words().has(key + ".tip")) {
            button.setToolTipText(desk.say(key + ".tip"));
        }
        button.addActionListener(action);
        return button;
    }
}
