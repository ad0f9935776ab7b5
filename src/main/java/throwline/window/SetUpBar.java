package throwline.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import throwline.model.SetUp;
import throwline.window.session.Session;

/** Choice of the set-up at hand, the list it stands in, and what it is held against. */
final class SetUpBar extends JPanel {

    private static final long serialVersionUID = 1;

    private final transient Desk desk;
    private final transient Session session;
    private final transient Consumer<Optional<String>> said;
    private final JComboBox<String> names = new JComboBox<>();
    private final JComboBox<String> against = new JComboBox<>();
    private final JButton back;
    private final JButton forget;
    private boolean showing;

    SetUpBar(Desk desk, Session session, Consumer<Optional<String>> said) {
        this.desk = desk;
        this.session = session;
        this.said = said;
        setLayout(new BoxLayout(this, BoxLayout.Y_AXIS));
        names.setName("set-up");
        names.addActionListener(e -> {
            if (!showing && names.getSelectedItem() instanceof String name) {
                session.take(name);
            }
        });
        against.setName("against");
        against.addActionListener(e -> {
            if (!showing && against.getSelectedItem() instanceof String name) {
                session.holdAgainst(name.equals(desk.say("window.before")) ? "" : name);
            }
        });
        back = Line.button(desk, "window.hand.back", e -> said.accept(session.backToBefore()));
        forget = Line.button(desk, "window.hand.forget", e -> session.forgetBefore());
        add(new Line(desk)
                .named("window.hand.set-up", names)
                .small("window.list.up", e -> said.accept(session.setUps().move(false)))
                .small("window.list.down", e -> said.accept(session.setUps().move(true)))
                .far());
        add(Box.createVerticalStrut(4));
        add(new Line(desk)
                .small("window.list.add", e -> add())
                .small("window.list.copy", e -> copy())
                .small("window.list.rename", e -> rename())
                .small("window.list.remove", e -> said.accept(session.setUps().remove()))
                .far());
        add(Box.createVerticalStrut(4));
        add(new Line(desk)
                .named("window.hand.against", against)
                .with(Line.tight(back))
                .with(Line.tight(forget))
                .far());
        changed();
    }

    void add() {
        named("window.list.add.ask", "", session.setUps()::add);
    }

    void copy() {
        named("window.list.copy.ask", session.setUp().name(), session.setUps()::copy);
    }

    void rename() {
        named("window.list.rename.ask", session.setUp().name(), session.setUps()::rename);
    }

    private void named(String question, String proposal, Function<String, Optional<String>> action) {
        String name = desk.ask(this, desk.say(question), proposal);
        if (!name.isEmpty()) {
            said.accept(action.apply(name));
        }
    }

    void changed() {
        showing = true;
        List<String> all = session.model().setUps().stream().map(SetUp::name).toList();
        ConditionsBar.Combo.fill(names, all, session.setUp().name());
        List<String> others = new ArrayList<>();
        if (session.before().isPresent()) {
            others.add(desk.say("window.before"));
        }
        all.stream().filter(name -> !name.equals(session.setUp().name())).forEach(others::add);
        String chosen = session.isAgainstBefore()
                ? desk.say("window.before")
                : session.against().map(SetUp::name).orElse("");
        ConditionsBar.Combo.fill(against, others, chosen);
        back.setEnabled(session.before().isPresent());
        forget.setEnabled(session.before().isPresent());
        showing = false;
    }
}
