package throwline.window;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import throwline.model.Servo;
import throwline.model.SetUp;
import throwline.report.chart.SectionShape;
import throwline.report.document.Figures;
import throwline.report.document.Value;
import throwline.window.session.Movable;
import throwline.window.session.Session;

/** Card of a surface of the set-up at hand: its section, a slider, and a line to type where it is to stand. */
final class SurfaceCard extends JPanel {

    private static final long serialVersionUID = 1;

    /** Steps of the slider in a degree. */
    private static final double TENTHS = 10;

    private static final int LARGE = 10;

    private final transient Desk desk;
    private final transient Session session;
    private final transient Figures figures;
    private final SectionCanvas canvas;
    private final JSlider slider = new JSlider();
    private final JTextField typed = new JTextField(8);
    private final JLabel stands = new JLabel(" ");
    private final JLabel wrong = new JLabel(" ");
    private transient Movable movable;
    private boolean showing;

    SurfaceCard(Desk desk, Session session, Figures figures, Movable movable, SectionShape shape) {
        this.desk = desk;
        this.session = session;
        this.figures = figures;
        this.movable = movable;
        setLayout(new BorderLayout(0, 2));
        canvas = new SectionCanvas(desk.look(), movable, shape, new SectionCanvas.Listener() {
            @Override
            public void dragged(double angle, boolean fine) {
                session.drag(name(), angle, fine);
            }

            @Override
            public void released() {
                said(session.letGo());
            }
        });
        add(head(), BorderLayout.NORTH);
        add(canvas, BorderLayout.CENTER);
        add(foot(), BorderLayout.SOUTH);
        name(canvas, "window.hand.section");
        name(slider, "window.hand.slider");
        name(typed, "window.hand.type");
        canvas.setName("section." + name());
        slider.setName("slider." + name());
        typed.setName("typed." + name());
        for (JComponent each : List.of(canvas, slider)) {
            keys(each);
        }
    }

    private String name() {
        return movable.name();
    }

    private void name(JComponent component, String key) {
        component.getAccessibleContext().setAccessibleName(desk.say(key, name()));
        component.setToolTipText(desk.say(key + ".tip", name()));
    }

    private JComponent head() {
        JPanel head = new JPanel();
        head.setLayout(new BoxLayout(head, BoxLayout.X_AXIS));
        head.add(Look.bold(new JLabel(name().equals(Servo.ELEVATOR) ? desk.say("window.hand.elevator") : name())));
        head.add(Box.createHorizontalStrut(10));
        head.add(stands);
        head.add(Box.createHorizontalGlue());
        stands.setMinimumSize(new Dimension(10, 10));
        return head;
    }

    private JTextField typing() {
        typed.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, desk.say("window.hand.type.hint"));
        typed.addActionListener(e -> {
            Optional<String> refused = session.type(name(), typed.getText());
            said(refused);
            if (refused.isEmpty()) {
                typed.setText("");
            }
        });
        return typed;
    }

    private JComponent foot() {
        JPanel foot = new JPanel(new BorderLayout());
        slider.setPaintTicks(false);
        slider.setPaintLabels(false);
        range();
        slider.addChangeListener(e -> slid());
        foot.add(new JLabel(desk.say("window.hand.up")), BorderLayout.WEST);
        foot.add(slider, BorderLayout.CENTER);
        foot.add(new Line(desk).with(new JLabel(desk.say("window.hand.down"))).with(typing()), BorderLayout.EAST);
        wrong.setForeground(desk.look().danger());
        wrong.setVisible(false);
        foot.add(wrong, BorderLayout.SOUTH);
        return foot;
    }

    private void range() {
        slider.setMinimum((int) Math.floor(-TENTHS * Math.toDegrees(movable.up())));
        slider.setMaximum((int) Math.ceil(TENTHS * Math.toDegrees(movable.down())));
        slider.setEnabled(slider.getMaximum() > slider.getMinimum());
    }

    private void slid() {
        if (showing) {
            return;
        }
        session.drag(name(), Math.toRadians(slider.getValue() / TENTHS), false);
        if (!slider.getValueIsAdjusting()) {
            said(session.letGo());
        }
    }

    private void keys(JComponent on) {
        key(on, KeyEvent.VK_UP, 0, -1, false);
        key(on, KeyEvent.VK_DOWN, 0, 1, false);
        key(on, KeyEvent.VK_LEFT, 0, -1, false);
        key(on, KeyEvent.VK_RIGHT, 0, 1, false);
        key(on, KeyEvent.VK_UP, KeyEvent.SHIFT_DOWN_MASK, -1, true);
        key(on, KeyEvent.VK_DOWN, KeyEvent.SHIFT_DOWN_MASK, 1, true);
        key(on, KeyEvent.VK_PAGE_UP, 0, -LARGE, false);
        key(on, KeyEvent.VK_PAGE_DOWN, 0, LARGE, false);
    }

    private void key(JComponent on, int code, int modifiers, int steps, boolean fine) {
        String command = code + "." + modifiers;
        on.getInputMap().put(KeyStroke.getKeyStroke(code, modifiers), command);
        on.getActionMap().put(command, new AbstractAction() {
            private static final long serialVersionUID = 1;

            @Override
            public void actionPerformed(ActionEvent event) {
                said(session.nudge(name(), steps, fine));
            }
        });
    }

    private void said(Optional<String> refused) {
        wrong.setVisible(refused.isPresent());
        wrong.setText(refused.map(Sentence::broken).orElse(" "));
        wrong.getAccessibleContext().setAccessibleDescription(refused.orElse(""));
    }

    /** Another model: its travel may differ. */
    void show(Movable other, SectionShape shape) {
        if (!other.equals(movable)) {
            movable = other;
            canvas.show(other, shape);
            showing = true;
            range();
            showing = false;
        }
    }

    /** Where it stands now, and before it was touched. */
    void show(SetUp now, Optional<SetUp> before) {
        double angle = movable.in(now);
        canvas.show(angle, before.map(movable::in));
        String text = angle == 0
                ? desk.say("row.neutral")
                : desk.say(
                        movable.isAtStop(angle) ? "window.hand.stands.stop" : "window.hand.stands",
                        figures.show(Value.of(angle, Value.Kind.DEFLECTION_TENTHS)),
                        figures.show(new Value.Edge(angle, movable.chord())));
        if (!text.equals(stands.getText())) {
            stands.setText(text);
            canvas.getAccessibleContext().setAccessibleDescription(text);
        }
        int value = (int) Math.round(TENTHS * Math.toDegrees(angle));
        if (slider.getValue() != value && !slider.getValueIsAdjusting()) {
            showing = true;
            slider.setValue(value);
            showing = false;
        }
    }
}
