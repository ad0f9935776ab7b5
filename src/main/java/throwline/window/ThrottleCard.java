package throwline.window;

import java.awt.BorderLayout;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import throwline.window.session.Session;

/** The throttle, and what the set-up at hand does in steady flight with it. */
final class ThrottleCard {

    private static final int STEP = 5;
    private static final double FULL = 100;

    private final Desk desk;
    private final Session session;
    private final JPanel card = new JPanel(new BorderLayout(0, 2));
    private final JSlider slider = new JSlider(0, (int) FULL);
    private final JLabel stands = new JLabel(" ");
    private final JLabel does = new JLabel();
    private boolean showing;

    ThrottleCard(Desk desk, Session session) {
        this.desk = desk;
        this.session = session;
        slider.setName("throttle");
        slider.setMinorTickSpacing(STEP);
        slider.setSnapToTicks(true);
        slider.setToolTipText(desk.say("window.throttle.slider.tip"));
        slider.getAccessibleContext().setAccessibleName(desk.say("window.throttle.slider"));
        slider.addChangeListener(e -> slid());
        does.setName("throttle does");
        card.add(
                new Line(desk)
                        .with(Look.bold(new JLabel(desk.say("window.throttle"))))
                        .with(stands)
                        .far(),
                BorderLayout.NORTH);
        card.add(slider, BorderLayout.CENTER);
        card.add(does, BorderLayout.SOUTH);
        changed();
    }

    private void slid() {
        double duty = STEP * Math.round(slider.getValue() / (double) STEP) / FULL;
        if (!showing && duty != session.throttle()) {
            session.throttle(duty);
        }
    }

    JComponent component() {
        return card;
    }

    /** Shows where the throttle stands. */
    void changed() {
        int value = (int) Math.round(FULL * session.throttle());
        stands.setText(value == 0 ? desk.say("window.throttle.closed") : desk.say("window.throttle.open", value));
        if (!slider.getValueIsAdjusting() && slider.getValue() != value) {
            showing = true;
            slider.setValue(value);
            showing = false;
        }
    }

    /** Shows what the set-up does with it. */
    void show(Optional<HandView.Said> said) {
        does.setForeground(
                said.filter(HandView.Said::danger).isPresent() ? desk.look().danger() : Look.quiet());
        String text = said.map(each -> Sentence.broken(each.text())).orElse("");
        if (!text.equals(does.getText())) {
            does.setText(text);
        }
    }
}
