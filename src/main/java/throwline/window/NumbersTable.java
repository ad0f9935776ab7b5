package throwline.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Component;
import java.awt.Font;
import java.util.List;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.UIManager;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;

/** The numbers of the set-up at hand with their bands, beside those of the set-up that it is held against. */
final class NumbersTable extends JTable {

    private static final long serialVersionUID = 1;

    private static final int LINE = 19;
    private static final int[] WIDTHS = {174, 122, 92, 120};

    private final transient Desk desk;
    private transient List<HandView.Line> every = List.of();
    private transient List<HandView.Line> lines = List.of();
    private boolean all;
    private String against = "";

    NumbersTable(Desk desk) {
        this.desk = desk;
        setModel(new Model());
        setDefaultRenderer(Object.class, new Cell());
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setRowSelectionAllowed(true);
        setShowGrid(false);
        getTableHeader().setReorderingAllowed(false);
        setName("numbers");
        getAccessibleContext().setAccessibleName(desk.say("window.hand.numbers"));
        sized();
    }

    private void sized() {
        setRowHeight(UIScale.scale(LINE));
        for (int i = 0; i < WIDTHS.length; i++) {
            getColumnModel().getColumn(i).setPreferredWidth(UIScale.scale(WIDTHS[i]));
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (getColumnCount() == WIDTHS.length) {
            sized();
        }
    }

    /** Shows all lines, or those that are read first. */
    void showAll(boolean wanted) {
        all = wanted;
        lines = chosen();
        ((Model) getModel()).fireTableDataChanged();
    }

    private List<HandView.Line> chosen() {
        return every.stream().filter(line -> all || !line.deep()).toList();
    }

    void show(HandView view) {
        every = view.lines();
        List<HandView.Line> wanted = chosen();
        boolean same = lines.size() == wanted.size();
        lines = wanted;
        if (!against.equals(view.against())) {
            against = view.against();
            getColumnModel().getColumn(3).setHeaderValue(against);
            getTableHeader().repaint();
        }
        Model model = (Model) getModel();
        if (same) {
            if (!lines.isEmpty()) {
                model.fireTableRowsUpdated(0, lines.size() - 1);
            }
        } else {
            model.fireTableDataChanged();
        }
    }

    /** Index of the row of numbers that is chosen; below zero where none is. */
    int chosenRow() {
        int line = getSelectedRow();
        return line < 0 || line >= lines.size() ? -1 : lines.get(line).row();
    }

    private final class Model extends AbstractTableModel {

        private static final long serialVersionUID = 1;

        @Override
        public int getRowCount() {
            return lines.size();
        }

        @Override
        public int getColumnCount() {
            return WIDTHS.length;
        }

        @Override
        public String getColumnName(int column) {
            return switch (column) {
                case 0 -> " ";
                case 1 -> desk.say("window.hand.now");
                case 2 -> desk.say("row.likely");
                default -> against;
            };
        }

        @Override
        public Object getValueAt(int row, int column) {
            HandView.Line line = lines.get(row);
            return switch (column) {
                case 0 -> line.label();
                case 1 -> line.now();
                case 2 -> line.likely();
                default -> line.close() ? desk.say("window.hand.close.mark", line.against()) : line.against();
            };
        }
    }

    private final class Cell extends DefaultTableCellRenderer {

        private static final long serialVersionUID = 1;

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focus, int row, int column) {
            super.getTableCellRendererComponent(table, value, selected, focus, row, column);
            HandView.Line line = lines.get(row);
            boolean strong = line.main() && column == 1 && !line.working();
            setFont(getFont().deriveFont(strong ? Font.BOLD : Font.PLAIN));
            if (!selected) {
                Color ink = UIManager.getColor("Table.foreground");
                boolean stands = line.main() && column < 2 && !line.working();
                setForeground(stands ? ink : Look.quiet());
            }
            setHorizontalAlignment(column == 0 ? LEADING : TRAILING);
            setToolTipText(getText());
            return this;
        }
    }
}
