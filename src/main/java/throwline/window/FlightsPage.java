package throwline.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import throwline.report.answer.LearnDocument;
import throwline.report.document.Figures;
import throwline.window.session.Session;

/** Flights: what was noticed is noted, and what it tells of the model stands here; a switch leaves it out. */
final class FlightsPage implements WindowPage {

    private final Desk desk;
    private final Session session;
    private final Flights flights;
    private final DocumentPane text;
    private final Column charts = new Column(10);
    private final JLabel state = new JLabel(" ");
    private final JCheckBox use;
    private final JPanel page = new JPanel(new BorderLayout(8, 4));
    private Optional<Flights.Told> shown = Optional.empty();

    FlightsPage(Desk desk, Session session, Figures figures, Program program) {
        this.desk = desk;
        this.session = session;
        flights = program.flights();
        text = new DocumentPane(desk, figures);
        use = new JCheckBox(desk.say("window.flights.use"));
        use.setName("use flights");
        use.addActionListener(e -> flights.want(use.isSelected()));
        state.setName("flights state");
        page.setBorder(BorderFactory.createEmptyBorder(6, 8, 6, 8));
        page.add(
                new Line(desk)
                        .button("window.flights.note", e -> program.window().noteFlight())
                        .with(use)
                        .with(state)
                        .far(),
                BorderLayout.NORTH);
        page.add(text.component(), BorderLayout.CENTER);
        JScrollPane scroll = charts.scrolled();
        scroll.setPreferredSize(new Dimension(UIScale.scale(HandPage.PICTURES + 16), 10));
        page.add(scroll, BorderLayout.EAST);
        entered();
    }

    @Override
    public String key() {
        return "flights";
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public void entered() {
        use.setSelected(flights.areWanted());
        String said = flights.state();
        state.setText(Sentence.broken(
                session.document().place().isEmpty()
                        ? desk.say("window.flights.save-first")
                        : said.isEmpty() ? desk.say("window.flights.none") : said.substring(2)));
        Optional<Flights.Told> now =
                flights.told().filter(told -> flights.of(session.model()).isPresent());
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        charts.removeAll();
        if (now.isEmpty()) {
            text.clear();
        }
        now.ifPresent(told -> {
            text.show(LearnDocument.of(told.learnt(), List::of, List.of()));
            told.shots().forEach(shot -> ComparePage.add(charts, shot));
        });
        charts.revalidate();
        charts.repaint();
    }
}
