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
import throwline.input.Question;
import throwline.model.Model;
import throwline.report.Sentences;
import throwline.units.Display;
import throwline.words.Message;

/** Questions about an own model or about a flight, a page each, with a way back. */
final class InterviewDialog {

    private final Desk desk;
    private final Questions questions;
    private final String counted;
    private final JDialog dialog;
    private final JPanel place = new JPanel(new BorderLayout());
    private final JLabel wrong = new JLabel(" ");
    private final JLabel count = new JLabel(" ");
    private final JButton back;
    private final JTextField typed = new JTextField(24);
    private Optional<ButtonGroup> choices = Optional.empty();
    private boolean complete;
    private int answered;

    /**
     * @param stem of the words: the title and what stands above a question
     * @param answered how many questions were answered at an earlier time
     */
    private InterviewDialog(Desk desk, JFrame over, Questions questions, String stem, int answered) {
        this.desk = desk;
        this.questions = questions;
        this.answered = answered;
        counted = stem + ".count";
        dialog = new JDialog(over, desk.say(stem + ".title"), true);
        back = Line.button(desk, "window.new.back", e -> take(Interview.BACK));
        JButton next = Line.button(desk, "window.new.next", e -> take(answer()));
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
        Questions questions = new Questions() {
            @Override
            public Optional<Asked> next() {
                return interview.next().map(question -> new Asked(desk.say(question.sentence()), question));
            }

            @Override
            public Optional<Message> answer(String text) {
                Optional<Message> refused = interview.answer(text);
                keeper.accept(interview.answers());
                return refused;
            }
        };
        open(new InterviewDialog(
                desk, over, questions, "window.new", interview.answers().size()));
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
        Questions questions = new Questions() {
            @Override
            public Optional<Asked> next() {
                return interview
                        .next()
                        .map(asked -> new Asked(desk.say(asked.sentence(), asked.about()), asked.question()));
            }

            @Override
            public Optional<Message> answer(String text) {
                return interview.answer(text);
            }
        };
        open(new InterviewDialog(desk, over, questions, "window.flights", 0));
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

    private void take(String answer) {
        Optional<Message> refused = questions.answer(answer);
        if (refused.isPresent()) {
            String why = refused.get().code().equals("input.new.needed")
                    ? desk.say("window.new.needed")
                    : new Sentences(desk.words(), Display.metric()).say(refused.get());
            wrong.setText(Sentence.broken(why));
            return;
        }
        wrong.setText(" ");
        answered += answer.equals(Interview.BACK) ? -1 : 1;
        show();
    }

    private void show() {
        Optional<Questions.Asked> next = questions.next();
        if (next.isEmpty()) {
            complete = true;
            dialog.dispose();
            return;
        }
        Question question = next.get().question();
        count.setText(desk.say(counted, answered + 1));
        back.setEnabled(answered > 0);
        place.removeAll();
        Column column = new Column(8);
        JLabel asked = new JLabel(Sentence.broken(next.get().sentence()));
        column.add(asked);
        asked.setLabelFor(typed);
        answers(column, question);
        typed.getAccessibleContext().setAccessibleName(next.get().sentence());
        column.add(wrong);
        if (!question.fallback().isEmpty()) {
            JLabel empty = new JLabel(
                    Sentence.broken(desk.say("window.new.empty", desk.say(question.fallback(), question.usual()))));
            empty.setForeground(Look.quiet());
            column.add(empty);
        }
        place.add(column.scrolled());
        place.revalidate();
        place.repaint();
    }

    private void answers(Column column, Question question) {
        List<String> all = question.choices();
        typed.setText("");
        if (all.isEmpty()) {
            choices = Optional.empty();
            column.add(new Line(desk).with(typed).far());
            SwingUtilities.invokeLater(typed::requestFocusInWindow);
            return;
        }
        ButtonGroup group = new ButtonGroup();
        boolean usual = !question.fallback().isEmpty() && all.contains(question.usual());
        boolean optional = !question.fallback().isEmpty() && !usual;
        if (optional) {
            radio(column, group, desk.say("window.new.none"), "", true);
        }
        for (int i = 0; i < all.size(); i++) {
            radio(
                    column,
                    group,
                    all.get(i),
                    all.get(i),
                    !optional && all.get(i).equals(usual ? question.usual() : all.get(0)));
        }
        choices = Optional.of(group);
    }

    private static void radio(Column column, ButtonGroup group, String text, String command, boolean chosen) {
        JRadioButton button = new JRadioButton(text, chosen);
        button.setActionCommand(command);
        group.add(button);
        column.add(button);
        if (chosen) {
            SwingUtilities.invokeLater(button::requestFocusInWindow);
        }
    }
}
