package throwline.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Font;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.UIManager;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import throwline.report.document.Comparison;
import throwline.report.document.Figures;
import throwline.report.document.Role;
import throwline.report.document.Text;

/** Set-ups side by side; a number opens how it was found. */
final class ComparisonGrid extends JTable {

    private static final long serialVersionUID = 1;

    private static final int LINE = 19;

    private final transient List<Row> rows = new ArrayList<>();
    private final transient Comparison comparison;
    private final int group;

    /**
     * A line.
     *
     * @param row index of the row of numbers
     * @param main true for its first line
     * @param label what it shows
     * @param cells one a set-up
     * @param quiet which of them stand back
     */
    private record Row(int row, boolean main, String label, List<String> cells, List<Boolean> quiet) {}

    ComparisonGrid(Desk desk, Figures figures, Comparison comparison, int group) {
        this.comparison = comparison;
        this.group = group;
        for (int i = 0; i < comparison.rows().size(); i++) {
            rows(i, comparison.rows().get(i), figures);
        }
        setModel(new Model());
        setDefaultRenderer(Object.class, new Cell());
        setShowGrid(false);
        setRowHeight(UIScale.scale(LINE));
        setCellSelectionEnabled(true);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        getTableHeader().setReorderingAllowed(false);
        getColumnModel().getColumn(0).setPreferredWidth(UIScale.scale(180));
        setName("comparison");
        getAccessibleContext().setAccessibleName(desk.say("window.compare.table"));
        Runnable how = () -> {
            if (getSelectedRow() >= 0 && getSelectedColumn() > 0) {
                FactsDialog.show(
                        this,
                        desk,
                        figures,
                        comparison,
                        new FactsDialog.At(group, rows.get(getSelectedRow()).row(), getSelectedColumn() - 1));
            }
        };
        addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                how.run();
            }
        });
        getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ENTER"), "how");
        getActionMap().put("how", Actions.of(how));
    }

    private void rows(int index, Comparison.Row row, Figures figures) {
        List<Comparison.Cell> cells = row.cells().get(group);
        if (cells.isEmpty()) {
            return;
        }
        String family = figures.show(row.family());
        String label = figures.show(row.label());
        rows.add(new Row(
                index,
                true,
                family.isEmpty() ? label : family + ", " + label,
                cells.stream().map(cell -> figures.show(cell.text())).toList(),
                cells.stream().map(cell -> cell.role() == Role.QUIET).toList()));
        for (Comparison.Below below : row.below()) {
            List<Text> texts = below.cells().get(group);
            if (texts.stream().anyMatch(text -> !text.isEmpty())) {
                rows.add(new Row(
                        index,
                        false,
                        figures.show(below.label()),
                        texts.stream().map(figures::show).toList(),
                        texts.stream().map(text -> true).toList()));
            }
        }
    }

    /** The table with its head, as high as it is. */
    JComponent boxed() {
        JPanel box = new JPanel(new BorderLayout());
        box.add(getTableHeader(), BorderLayout.NORTH);
        box.add(this, BorderLayout.CENTER);
        return box;
    }

    /** The table as text with tabs, as spreadsheets take it. */
    static String copied(Comparison comparison, Figures figures, Desk desk) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < comparison.groups().size(); i++) {
            ComparisonGrid table = new ComparisonGrid(desk, figures, comparison, i);
            for (int column = 0; column < table.getColumnCount(); column++) {
                text.append(column == 0 ? "" : "\t")
                        .append(table.getColumnName(column).strip());
            }
            text.append('\n');
            for (int row = 0; row < table.getRowCount(); row++) {
                for (int column = 0; column < table.getColumnCount(); column++) {
                    text.append(column == 0 ? "" : "\t").append(table.getValueAt(row, column));
                }
                text.append('\n');
            }
        }
        return text.toString();
    }

    private final class Model extends AbstractTableModel {

        private static final long serialVersionUID = 1;

        @Override
        public int getRowCount() {
            return rows.size();
        }

        @Override
        public int getColumnCount() {
            return comparison.groups().get(group).columns().size() + 1;
        }

        @Override
        public String getColumnName(int column) {
            return column == 0 ? " " : comparison.groups().get(group).columns().get(column - 1);
        }

        @Override
        public Object getValueAt(int row, int column) {
            List<String> cells = rows.get(row).cells();
            return column == 0 ? rows.get(row).label() : column <= cells.size() ? cells.get(column - 1) : "";
        }
    }

    private final class Cell extends DefaultTableCellRenderer {

        private static final long serialVersionUID = 1;

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focus, int row, int column) {
            super.getTableCellRendererComponent(table, value, selected, focus, row, column);
            Row line = rows.get(row);
            boolean quiet =
                    column > 0 && column <= line.quiet().size() && line.quiet().get(column - 1);
            setFont(getFont().deriveFont(line.main() && column > 0 && !quiet ? Font.BOLD : Font.PLAIN));
            if (!selected) {
                setForeground(line.main() && !quiet ? UIManager.getColor("Table.foreground") : Look.quiet());
            }
            setHorizontalAlignment(column == 0 ? LEADING : TRAILING);
            return this;
        }
    }
}
