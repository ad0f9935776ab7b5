package throwline.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import throwline.input.FlightInterview;
import throwline.input.Interview;
import throwline.model.Model;
import throwline.window.session.Wizard;

/** Questions about an own model or about a flight, a page each, with a way back. */
final class InterviewDialog {

    private final Desk desk;
    private final Wizard wizard;
    private final String counted;
    private final JDialog dialog;
    private final JPanel place = new JPanel(new BorderLayout());
    private final JLabel wrong = new JLabel(" ");
    private final JLabel count = new JLabel(" ");
    private final JButton back;
    private final JTextField typed = new JTextField(24);
    private Optional<ButtonGroup> choices = Optional.empty();
    private boolean complete;

    /**
     * @param stem of the words: the title and what stands above a question
     */
    private InterviewDialog(Desk desk, JFrame over, Wizard wizard, String stem) {
        this.desk = desk;
        this.wizard = wizard;
        counted = stem + ".count";
        dialog = new JDialog(over, desk.say(stem + ".title"), true);
        back = Line.button(desk, "window.new.back", e -> after(wizard.back()));
        JButton next = Line.button(desk, "window.new.next", e -> after(wizard.answer(answer())));
        JPanel content = new JPanel(new BorderLayout(0, 10));
        content.setBorder(BorderFactory.createEmptyBorder(16, 18, 14, 18));
        count.setForeground(Look.quiet());
        content.add(count, BorderLayout.NORTH);
        content.add(place, BorderLayout.CENTER);
        JPanel foot = new JPanel(new BorderLayout());
        wrong.setForeground(desk.look().danger());
        wrong.setName("new wrong");
        foot.add(
                new Line(desk)
                        .button("window.cancel", e -> dialog.dispose())
                        .far()
                        .with(back)
                        .with(next),
                BorderLayout.SOUTH);
        content.add(foot, BorderLayout.SOUTH);
        dialog.setContentPane(content);
        dialog.getRootPane().setDefaultButton(next);
        typed.setName("answer");
        show();
        dialog.setSize(new Dimension(UIScale.scale(640), UIScale.scale(420)));
        dialog.setLocationRelativeTo(over);
    }

    /**
     * Asks all questions.
     *
     * @param earlier answers of an earlier time
     * @param keeper takes the answers after each of them
     * @return the interview; all questions are answered where {@link Interview#next} is empty
     */
    static Interview ask(Desk desk, JFrame over, Map<String, String> earlier, Consumer<Map<String, String>> keeper) {
        Interview interview = new Interview();
        interview.resume(earlier);
        open(new InterviewDialog(desk, over, Wizard.ofModel(desk.words(), interview, keeper), "window.new"));
        return interview;
    }

    /**
     * Asks what was noticed in a flight.
     *
     * @param today what an empty answer to the first question means
     * @return the interview; all questions are answered where {@link FlightInterview#next} is empty
     */
    static FlightInterview note(Desk desk, JFrame over, Model model, String today) {
        FlightInterview interview = new FlightInterview(model, today);
        open(new InterviewDialog(desk, over, Wizard.ofFlight(desk.words(), interview), "window.flights"));
        return interview;
    }

    private static void open(InterviewDialog asked) {
        if (!asked.complete) {
            asked.dialog.setVisible(true);
        }
    }

    private String answer() {
        return choices.map(ButtonGroup::getSelection)
                .map(chosen -> chosen.getActionCommand())
                .orElseGet(typed::getText);
    }

    private void after(Optional<String> refused) {
        wrong.setText(refused.map(Sentence::broken).orElse(" "));
        if (refused.isEmpty()) {
            show();
        }
    }

    private void show() {
        Optional<Wizard.Page> open = wizard.page();
        if (open.isEmpty()) {
            complete = true;
            dialog.dispose();
            return;
        }
        Wizard.Page page = open.get();
        count.setText(desk.say(counted, page.number()));
        back.setEnabled(page.mayGoBack());
        place.removeAll();
        Column column = new Column(8);
        JLabel asked = new JLabel(Sentence.broken(page.sentence()));
        asked.setName("question");
        column.add(asked);
        asked.setLabelFor(typed);
        answers(column, page);
        typed.getAccessibleContext().setAccessibleName(page.sentence());
        column.add(wrong);
        if (!page.empty().isEmpty()) {
            JLabel empty = new JLabel(Sentence.broken(page.empty()));
            empty.setForeground(Look.quiet());
            column.add(empty);
        }
        place.add(column.scrolled());
        place.revalidate();
        place.repaint();
    }

    private void answers(Column column, Wizard.Page page) {
        List<Wizard.Choice> all = page.choices();
        typed.setText(page.proposal());
        typed.selectAll();
        if (all.isEmpty()) {
            choices = Optional.empty();
            column.add(new Line(desk).with(typed).far());
            SwingUtilities.invokeLater(typed::requestFocusInWindow);
            return;
        }
        ButtonGroup group = new ButtonGroup();
        all.forEach(choice -> radio(column, group, choice));
        choices = Optional.of(group);
    }

    private static void radio(Column column, ButtonGroup group, Wizard.Choice choice) {
        JRadioButton button = new JRadioButton(choice.text(), choice.chosen());
        button.setActionCommand(choice.answer());
        group.add(button);
        column.add(button);
        if (choice.chosen()) {
            SwingUtilities.invokeLater(button::requestFocusInWindow);
        }
    }
}
