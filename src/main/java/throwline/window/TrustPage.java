package throwline.window;

import java.awt.BorderLayout;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import throwline.input.PackedAirfoils;
import throwline.report.answer.BookDocument;
import throwline.report.chart.BookCharts;
import throwline.report.document.Figures;
import throwline.validation.Book;
import throwline.validation.CaseFolder;
import throwline.validation.Validation;

/** Trust in the numbers: every published and measured case, and how far the answers are off. It belongs to no model. */
final class TrustPage implements WindowPage {

    private final Desk desk;
    private final DocumentPane answer;
    private final JPanel page = new JPanel(new BorderLayout(8, 4));
    private final JLabel state = new JLabel(" ");
    private final JButton run;
    private final Work work = new Work();
    private final WorkControls controls;

    TrustPage(Desk desk, Figures figures) {
        this.desk = desk;
        answer = new DocumentPane(desk, figures);
        controls = new WorkControls(desk, work, state);
        run = Line.button(desk, "window.trust.run", e -> run());
        page.setBorder(BorderFactory.createEmptyBorder(6, 8, 6, 8));
        Column column = new Column(8);
        column.setBorder(BorderFactory.createEmptyBorder(6, 8, 6, 8));
        column.add(new JLabel(Sentence.broken(desk.say("window.trust.intro"))));
        column.add(new Line(desk)
                .with(run)
                .with(controls.stop())
                .with(controls.progress())
                .far());
        state.setName("trust state");
        column.add(state);
        controls.busy(false);
        page.add(column, BorderLayout.NORTH);
        page.add(answer.component(), BorderLayout.CENTER);
    }

    @Override
    public String key() {
        return "trust";
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public void close() {
        work.stop();
    }

    private void run() {
        controls.busy(true);
        state.setText(desk.say("window.working"));
        work.begin(
                sections -> new Validation(sections, new PackedAirfoils()).run(CaseFolder.packed()),
                this::show,
                fault -> {
                    controls.busy(false);
                    state.setText(desk.say("window.fault", fault.getClass().getSimpleName()));
                });
    }

    private void show(Book book) {
        controls.busy(false);
        state.setText(desk.say("window.trust.done"));
        answer.show(BookDocument.of(book, () -> new BookCharts(desk.words())));
    }
}
