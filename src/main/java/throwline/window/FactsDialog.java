package throwline.window;

import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
import javax.swing.JEditorPane;
import javax.swing.JOptionPane;
import javax.swing.JScrollPane;
import throwline.report.document.Comparison;
import throwline.report.document.Figures;

/** Facts that open on a number: how it was found, from what, after whom, and what its band rests on. */
final class FactsDialog {

    private FactsDialog() {}

    /**
     * A number of a comparison.
     *
     * @param group of columns
     * @param row counted from 0
     * @param column of the group
     */
    record At(int group, int row, int column) {}

    static void show(Component over, Desk desk, Figures figures, Comparison rows, At at) {
        Comparison.Row chosen = rows.rows().get(at.row());
        List<Comparison.Cell> cells = chosen.cells().get(at.group());
        if (at.column() >= cells.size()) {
            return;
        }
        Comparison.Cell cell = cells.get(at.column());
        StringBuilder text = new StringBuilder("<html><body>");
        text.append("<h3>")
                .append(Sentence.escaped(figures.show(chosen.label())))
                .append(": ")
                .append(Sentence.escaped(figures.show(cell.text())))
                .append("</h3>");
        String reason = figures.show(cell.reason());
        if (!reason.isEmpty()) {
            text.append("<p>").append(Sentence.escaped(reason)).append("</p>");
        }
        cell.facts()
                .forEach(fact -> text.append("<p><b>")
                        .append(Sentence.escaped(figures.show(fact.label())))
                        .append("</b><br>")
                        .append(Sentence.escaped(figures.show(fact.text())))
                        .append("</p>"));
        JEditorPane pane = new JEditorPane("text/html", text + "</body></html>");
        pane.putClientProperty(JEditorPane.HONOR_DISPLAY_PROPERTIES, true);
        pane.setEditable(false);
        pane.setCaretPosition(0);
        JScrollPane scroll = new JScrollPane(pane);
        scroll.setPreferredSize(new Dimension(
                com.formdev.flatlaf.util.UIScale.scale(560), com.formdev.flatlaf.util.UIScale.scale(380)));
        JOptionPane.showMessageDialog(over, scroll, desk.say("window.how"), JOptionPane.PLAIN_MESSAGE);
    }
}
