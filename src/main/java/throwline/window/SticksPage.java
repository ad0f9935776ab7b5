package throwline.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import throwline.model.Stick;
import throwline.report.document.Figures;
import throwline.window.session.Session;
import throwline.window.session.StickEdits;

/** Page of what full stick adds: the list of sticks, and what the chosen one moves in which set-ups. */
final class SticksPage implements WindowPage {

    private static final int LEFT = 300;

    private final Desk desk;
    private final Session session;
    private final Figures figures;
    private final JPanel page = new JPanel(new BorderLayout(16, 4));
    private final DefaultListModel<String> names = new DefaultListModel<>();
    private final JList<String> list = new JList<>(names);
    private final JPanel place = new JPanel(new BorderLayout());
    private final JLabel wrong = new JLabel(" ");
    private final List<JButton> ofChosen = new ArrayList<>();
    private Optional<StickForm> form = Optional.empty();
    private boolean showing;

    SticksPage(Desk desk, Session session, Figures figures) {
        this.desk = desk;
        this.session = session;
        this.figures = figures;
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setName("sticks");
        list.getAccessibleContext().setAccessibleName(desk.say("window.stick.list"));
        list.addListSelectionListener(e -> {
            if (!showing && !e.getValueIsAdjusting()) {
                wrong.setText(" ");
                formed();
            }
        });
        wrong.setForeground(desk.look().danger());
        wrong.setName("stick wrong");
        JPanel left = new JPanel(new BorderLayout(0, 6));
        left.add(new JScrollPane(list), BorderLayout.CENTER);
        left.add(buttons(), BorderLayout.SOUTH);
        left.setPreferredSize(new Dimension(UIScale.scale(LEFT), 10));
        page.setBorder(BorderFactory.createEmptyBorder(6, 8, 6, 8));
        page.add(left, BorderLayout.WEST);
        page.add(place, BorderLayout.CENTER);
        page.add(wrong, BorderLayout.SOUTH);
        entered();
    }

    private JComponent buttons() {
        Column column = new Column(4);
        column.add(new Line(desk)
                .small("window.stick.roll", e -> named("window.stick.add.ask", "", edits()::addRoll))
                .small("window.stick.pull", e -> named("window.stick.add.ask", "", edits()::add))
                .far());
        column.add(new Line(desk)
                .with(chosen(
                        "window.list.copy", name -> named("window.list.copy.ask", name, to -> edits().copy(name, to))))
                .with(chosen(
                        "window.list.rename",
                        name -> named("window.list.rename.ask", name, to -> edits().rename(name, to))))
                .far());
        column.add(new Line(desk)
                .with(chosen("window.list.up", name -> moved(name, false)))
                .with(chosen("window.list.down", name -> moved(name, true)))
                .with(chosen("window.list.remove", name -> said(edits().remove(name))))
                .far());
        return column;
    }

    private StickEdits edits() {
        return session.sticks();
    }

    private JButton chosen(String key, java.util.function.Consumer<String> action) {
        JButton button = Line.tight(Line.button(
                desk, key, e -> Optional.ofNullable(list.getSelectedValue()).ifPresent(action)));
        button.setName("stick." + key);
        ofChosen.add(button);
        return button;
    }

    private void moved(String name, boolean down) {
        int end = down ? names.size() - 1 : 0;
        if (names.indexOf(name) != end) {
            said(edits().move(name, down));
        }
    }

    private void named(String question, String proposal, Function<String, Optional<String>> action) {
        String name = desk.ask(page, desk.say(question), proposal);
        if (!name.isEmpty()) {
            Optional<String> refused = action.apply(name);
            said(refused);
            if (refused.isEmpty()) {
                list.setSelectedValue(name, true);
            }
        }
    }

    private void said(Optional<String> refused) {
        wrong.setText(refused.map(Sentence::broken).orElse(" "));
    }

    @Override
    public String key() {
        return "sticks";
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public void entered() {
        List<String> now = session.model().sticks().stream().map(Stick::name).toList();
        if (!now.equals(java.util.Collections.list(names.elements()))) {
            Optional<String> chosen = Optional.ofNullable(list.getSelectedValue());
            int index = Math.max(0, list.getSelectedIndex());
            showing = true;
            names.clear();
            now.forEach(names::addElement);
            showing = false;
            if (chosen.filter(now::contains).isPresent()) {
                list.setSelectedValue(chosen.get(), true);
            } else if (!now.isEmpty()) {
                list.setSelectedIndex(Math.min(index, now.size() - 1));
            }
        }
        formed();
    }

    /** The form of the chosen stick, made anew only where another one is needed. */
    private void formed() {
        Optional<String> chosen = Optional.ofNullable(list.getSelectedValue());
        ofChosen.forEach(button -> button.setEnabled(chosen.isPresent()));
        if (chosen.isEmpty()) {
            form = Optional.empty();
            place.removeAll();
            place.add(new JLabel(Sentence.broken(desk.say("window.stick.none"))), BorderLayout.NORTH);
        } else if (form.filter(each -> each.isOf(chosen.get())).isEmpty()) {
            StickForm made = new StickForm(desk, session, figures, chosen.get(), this::said);
            form = Optional.of(made);
            place.removeAll();
            place.add(made.component());
        } else {
            form.get().changed();
            return;
        }
        place.revalidate();
        place.repaint();
    }
}
