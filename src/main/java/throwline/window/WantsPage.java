package throwline.window;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import throwline.input.ModelCopy;
import throwline.input.ModelText;
import throwline.input.ReadFlights;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.report.answer.FindDocument;
import throwline.report.chart.FindCharts;
import throwline.report.document.Block;
import throwline.report.document.Figures;
import throwline.section.SectionAerodynamics;
import throwline.study.Bands;
import throwline.study.FindAfterFlights;
import throwline.study.FindQuestion;
import throwline.study.FindResult;
import throwline.study.FindStudy;
import throwline.window.session.Session;
import throwline.window.session.TypedWants;

/** From what a pilot wants to throws: each proposal is tried on, taken over or dropped. */
final class WantsPage implements WindowPage {

    private static final int LEFT = 380;

    private final Desk desk;
    private final Session session;
    private final MainWindow window;
    private final Flights flights;
    private final DocumentPane answer;
    private final JPanel page = new JPanel(new BorderLayout(8, 4));
    private final JTextField stall = field("stall");
    private final JTextField down = field("down");
    private final JTextField downAt = field("down-at");
    private final JTextField roll = field("roll");
    private final JTextField rollAt = field("roll-at");
    private final JTextField takeOff = field("take-off");
    private final JTextField climb = field("climb");
    private final JTextField name = field("name");
    private final JCheckBox help = new JCheckBox();
    private final JCheckBox loop = new JCheckBox();
    private final JComboBox<String> trim = new JComboBox<>();
    private final JLabel state = new JLabel(" ");
    private final JButton tryOn;
    private final JButton takeOver;
    private final JButton drop;
    private final Work work = new Work();
    private final WorkControls controls;
    private Optional<FindResult> found = Optional.empty();
    /** Names of what is being tried on. */
    private List<List<String>> tried = List.of();

    WantsPage(Desk desk, Session session, Figures figures, Program program) {
        this.desk = desk;
        this.session = session;
        window = program.window();
        flights = program.flights();
        answer = new DocumentPane(desk, figures);
        controls = new WorkControls(desk, work, state);
        tryOn = Line.button(desk, "window.wants.try", e -> tryOn());
        takeOver = Line.button(desk, "window.wants.take", e -> takeOver());
        drop = Line.button(desk, "window.wants.drop", e -> drop());
        page.setBorder(BorderFactory.createEmptyBorder(6, 8, 6, 8));
        JScrollPane left = wants().scrolled();
        left.setPreferredSize(new Dimension(UIScale.scale(LEFT), 10));
        page.add(left, BorderLayout.WEST);
        page.add(answer.component(), BorderLayout.CENTER);
        changed();
    }

    private static JTextField field(String name) {
        JTextField field = new JTextField(7);
        field.setName("want." + name);
        return field;
    }

    /** An example in a field that is empty. */
    private void hint(JTextField field, String key) {
        field.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, desk.say(key));
    }

    private Column wants() {
        Column column = new Column(8);
        column.setBorder(BorderFactory.createEmptyBorder(6, 8, 6, 8));
        column.add(new JLabel(Sentence.broken(desk.say("window.wants.intro"))));
        column.add(new Line(desk).named("window.wants.stall", stall).far());
        column.add(new Line(desk)
                .named("window.wants.down", down)
                .named("window.wants.at", downAt)
                .far());
        column.add(new Line(desk)
                .named("window.wants.roll", roll)
                .named("window.wants.at", rollAt)
                .far());
        column.add(new Line(desk).named("window.wants.take-off", takeOff).far());
        column.add(new Line(desk).named("window.wants.climb", climb).far());
        column.add(new Line(desk).named("window.wants.trim", trim).far());
        hint(stall, "window.wants.stall.hint");
        hint(down, "window.wants.down.hint");
        hint(roll, "window.wants.roll.hint");
        hint(downAt, "window.wants.at.hint");
        hint(rollAt, "window.wants.at.hint");
        help.setText(desk.say("window.wants.help"));
        help.setName("want.help");
        loop.setText(desk.say("window.wants.loop"));
        loop.setName("want.loop");
        column.add(help);
        column.add(loop);
        name.setText(desk.say("window.wants.name.usual"));
        column.add(new Line(desk).named("window.wants.name", name).far());
        column.add(new Line(desk)
                .button("window.wants.find", e -> find())
                .with(controls.stop())
                .far());
        column.add(controls.progress());
        column.add(state);
        column.add(new Line(desk).with(tryOn).with(takeOver).with(drop).far());
        controls.busy(false);
        return column;
    }

    @Override
    public String key() {
        return "wants";
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
    public void changed() {
        List<String> names = new ArrayList<>(List.of(""));
        session.model().setUps().stream()
                .filter(setUp -> !session.model().isReference(setUp))
                .map(SetUp::name)
                .forEach(names::add);
        Object chosen = trim.getSelectedItem();
        ConditionsBar.Combo.fill(trim, names, chosen instanceof String text && names.contains(text) ? text : "");
        tryOn.setEnabled(found.isPresent() && tried.isEmpty());
        takeOver.setEnabled(!tried.isEmpty());
        drop.setEnabled(found.isPresent());
    }

    private void find() {
        TypedWants typed = new TypedWants(
                stall.getText(),
                down.getText(),
                downAt.getText(),
                roll.getText(),
                rollAt.getText(),
                String.valueOf(trim.getSelectedItem()),
                help.isSelected(),
                loop.isSelected(),
                takeOff.getText(),
                climb.getText(),
                name.getText());
        TypedWants.Outcome read = typed.read(session.model(), session.pack());
        if (read instanceof TypedWants.Wrong wrong) {
            state.setText(Sentence.broken(session.say(wrong.note())));
            return;
        }
        FindQuestion question = ((TypedWants.Asked) read).question();
        Optional<ReadFlights.Notes> notes = flights.notesOf(session.model());
        Compared.Open open = Compared.Open.of(session);
        controls.busy(true);
        state.setText(desk.say("window.working"));
        work.begin(sections -> found(sections, open, question, notes), answered -> show(answered, open), fault -> {
            controls.busy(false);
            state.setText(desk.say("window.fault", fault.getClass().getSimpleName()));
        });
    }

    private static FindAfterFlights.Found found(
            SectionAerodynamics sections,
            Compared.Open open,
            FindQuestion question,
            Optional<ReadFlights.Notes> notes) {
        Model model = open.project().model();
        return notes.map(flown -> new FindAfterFlights(
                                sections, Bands.load(), model, open.airfoils(), flown.notes(), flown.logs())
                        .find(question))
                .orElseGet(() -> new FindAfterFlights.Found(
                        new FindStudy(sections, Bands.load()).find(model, open.airfoils(), question),
                        Optional.empty()));
    }

    private void show(FindAfterFlights.Found answered, Compared.Open open) {
        FindResult result = answered.result();
        controls.busy(false);
        boolean any = !result.proposed().isEmpty() || !result.sticks().isEmpty();
        found = any ? Optional.of(result) : Optional.empty();
        tried = List.of();
        state.setText(desk.say(result.isMet() ? "window.wants.met" : any ? "window.wants.near" : "window.wants.none"));
        answer.show(FindDocument.of(
                result,
                answered.learnt(),
                () -> new FindCharts(desk.words()),
                new Block.Enclosed(open.fileName(), open.project().text())));
        changed();
    }

    /** Puts what was found into the model, and to hand. */
    private void tryOn() {
        FindResult result = found.orElseThrow();
        Optional<ModelCopy> copy =
                Optional.of(new ModelCopy(session.document().text().text()));
        List<List<String>> names = new ArrayList<>();
        for (SetUp setUp : result.proposed()) {
            copy = copy.flatMap(c -> c.with(setUp, ""));
            names.add(List.of("set-ups", setUp.name()));
        }
        for (Stick stick : result.sticks()) {
            copy = copy.flatMap(c -> c.with(stick, ""));
            names.add(List.of("sticks", stick.name()));
        }
        Optional<String> refused = session.apply(copy.map(c -> new ModelText(c.text())));
        if (refused.isPresent()) {
            state.setText(Sentence.broken(refused.get()));
            return;
        }
        tried = List.copyOf(names);
        result.proposed().stream().findFirst().ifPresent(setUp -> session.take(setUp.name()));
        state.setText(desk.say("window.wants.tried"));
        changed();
        window.go(0);
    }

    private void takeOver() {
        tried = List.of();
        found = Optional.empty();
        state.setText(desk.say("window.wants.taken"));
        changed();
    }

    private void drop() {
        Optional<ModelText> text = Optional.of(session.document().text());
        for (List<String> path : tried) {
            text = text.flatMap(t -> t.without(path));
        }
        Optional<String> refused = tried.isEmpty() ? Optional.empty() : session.apply(text);
        tried = List.of();
        found = Optional.empty();
        answer.clear();
        state.setText(refused.orElse(desk.say("window.wants.dropped")));
        changed();
    }
}
