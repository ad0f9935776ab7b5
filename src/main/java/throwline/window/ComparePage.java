package throwline.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.Timer;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.report.chart.Charts;
import throwline.report.document.Block;
import throwline.report.document.Comparison;
import throwline.report.document.Figures;
import throwline.study.Learnt;
import throwline.window.session.Session;

/** All set-ups side by side: the table, and every chart. */
final class ComparePage implements WindowPage {

    /** Work begins once nothing has changed for so long, ms. */
    private static final int REST = 300;

    private final Desk desk;
    private final Session session;
    private final Flights flights;
    private final Figures figures;
    private final DocumentPane text;
    private final Column charts = new Column(10);
    private final JLabel state = new JLabel(" ");
    private final JPanel page = new JPanel(new BorderLayout(8, 4));
    private final Work work = new Work();
    private final Timer timer;
    private Optional<Asked> shown = Optional.empty();
    private Optional<Compared> found = Optional.empty();

    private record Asked(Model model, Pack pack, Optional<Learnt> learnt) {
        static Asked of(Session session, Flights flights) {
            return new Asked(session.model(), session.pack(), flights.of(session.model()));
        }
    }

    private record Ready(Compared compared, List<HandView.Shot> shots) {}

    ComparePage(Desk desk, Session session, Figures figures, Program program) {
        this.desk = desk;
        this.session = session;
        flights = program.flights();
        this.figures = figures;
        text = new DocumentPane(desk, figures);
        timer = new Timer(REST, e -> begin(program.ink()));
        timer.setRepeats(false);
        page.setBorder(BorderFactory.createEmptyBorder(6, 8, 6, 8));
        state.setName("compare state");
        page.add(new Line(desk).with(state).far().button("window.compare.copy", e -> copy()), BorderLayout.NORTH);
        page.add(text.component(), BorderLayout.CENTER);
        JScrollPane scroll = charts.scrolled();
        scroll.setPreferredSize(new Dimension(UIScale.scale(HandPage.PICTURES + 16), 10));
        page.add(scroll, BorderLayout.EAST);
    }

    @Override
    public String key() {
        return "compare";
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public void close() {
        work.stop();
    }

    @Override
    public void entered() {
        Optional<Asked> wanted = Optional.of(Asked.of(session, flights));
        if (!session.isHeld() && !wanted.equals(shown)) {
            state.setText(desk.say("window.working"));
            timer.restart();
        }
    }

    private void begin(Ink ink) {
        Asked asked = Asked.of(session, flights);
        Compared.Task task = Compared.Task.of(desk.words(), session, asked.learnt(), false);
        work.begin(
                sections -> {
                    Compared compared = task.run(sections);
                    List<HandView.Shot> shots = new Charts(
                                    desk.words(), compared.page().besideSpeed())
                                    .onScreen(
                                            compared.comparison(),
                                            compared.comparison().packs().get(0))
                                    .stream()
                                    .map(ink::shot)
                                    .toList();
                    return new Ready(compared, shots);
                },
                ready -> show(asked, ready),
                fault -> state.setText(desk.say("window.fault", fault.getClass().getSimpleName())));
    }

    private void show(Asked asked, Ready ready) {
        shown = Optional.of(asked);
        found = Optional.of(ready.compared());
        state.setText(
                desk.say("window.compare.of", asked.model().name(), asked.pack().name()));
        text.show(ready.compared().document());
        charts.removeAll();
        ready.shots().forEach(shot -> add(charts, shot));
        charts.revalidate();
        charts.repaint();
    }

    /** A picture with its title above and its caption below. */
    static void add(Column charts, HandView.Shot shot) {
        PictureView picture = new PictureView();
        picture.show(shot);
        JLabel title = Look.bold(new JLabel(Sentence.broken(shot.title())));
        charts.add(title);
        charts.add(picture);
        JLabel caption = new JLabel(Sentence.broken(String.join(" ", shot.caption())));
        caption.setForeground(Look.quiet());
        charts.add(caption);
    }

    private void copy() {
        found.ifPresent(compared -> {
            String table = tables(compared.document().blocks()).stream()
                    .map(each -> ComparisonGrid.copied(each, figures, desk))
                    .collect(Collectors.joining("\n"));
            Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(table), null);
            state.setText(desk.say("window.compare.copied"));
        });
    }

    /** All comparisons among these blocks. */
    static List<Comparison> tables(List<Block> blocks) {
        List<Comparison> all = new ArrayList<>();
        for (Block block : blocks) {
            if (block instanceof Comparison comparison) {
                all.add(comparison);
            } else if (block instanceof Block.Section section) {
                all.addAll(tables(section.blocks()));
            }
        }
        return all;
    }
}
