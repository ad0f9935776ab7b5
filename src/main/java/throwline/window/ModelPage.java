package throwline.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.UIManager;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import throwline.input.KeyForm;
import throwline.input.Problem;
import throwline.model.Assumption;
import throwline.window.session.Session;

/** Every key of the model as a form, with the reader's own messages at the field. */
final class ModelPage implements WindowPage {

    private static final int LINE = 22;
    private static final int FOOT = 110;

    private final Desk desk;
    private final Session session;
    private final JPanel page = new JPanel(new BorderLayout(8, 6));
    private final JTable table = new JTable();
    private final InShortPane about;
    private final PartBar parts;
    private final SketchCard sketch;
    private List<KeyForm.Field> fields = List.of();
    private Map<String, String> assumed = Map.of();
    private Map<String, String> wrong = Map.of();
    private String shown = "";

    ModelPage(Desk desk, Session session) {
        this.desk = desk;
        this.session = session;
        about = new InShortPane(desk);
        parts = new PartBar(desk, session, this::said);
        sketch = new SketchCard(desk, session);
        about.getAccessibleContext().setAccessibleName(desk.say("window.model.about"));
        table.setModel(new Model());
        table.setDefaultRenderer(Object.class, new Cell());
        table.setRowHeight(UIScale.scale(LINE));
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.putClientProperty("terminateEditOnFocusLost", true);
        table.getTableHeader().setReorderingAllowed(false);
        table.getSelectionModel().addListSelectionListener(e -> tell());
        table.setName("keys");
        table.getAccessibleContext().setAccessibleName(desk.say("window.model.table"));
        // Keys are told apart by their ends, so that the meaning, which stands below too, gives way.
        table.setAutoResizeMode(JTable.AUTO_RESIZE_LAST_COLUMN);
        int[] widths = {240, 190, 420};
        for (int i = 0; i < widths.length; i++) {
            table.getColumnModel().getColumn(i).setPreferredWidth(UIScale.scale(widths[i]));
        }
        page.setBorder(BorderFactory.createEmptyBorder(6, 8, 6, 8));
        page.add(new JScrollPane(table), BorderLayout.CENTER);
        page.add(sketch, BorderLayout.EAST);
        JScrollPane foot = HandPage.plain(new JScrollPane(about));
        foot.setPreferredSize(new Dimension(10, UIScale.scale(FOOT)));
        JPanel below = new JPanel(new BorderLayout(0, 4));
        below.add(parts.component(), BorderLayout.NORTH);
        below.add(foot, BorderLayout.CENTER);
        page.add(below, BorderLayout.SOUTH);
    }

    @Override
    public String key() {
        return "model";
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public void entered() {
        String text = session.document().text().text();
        if (text.equals(shown)) {
            return;
        }
        shown = text;
        int before = fields.size();
        int chosen = table.getSelectedRow();
        fields = KeyForm.of(session.document().text());
        assumed = session.document().good().assumed().stream()
                .collect(Collectors.toMap(Assumption::path, Assumption::value, (a, b) -> a));
        wrong = session.document().problems().stream()
                .collect(Collectors.toMap(Problem::keyPath, p -> session.say(p.note()), (a, b) -> a));
        Model model = (Model) table.getModel();
        if (before == fields.size() && before > 0) {
            model.fireTableRowsUpdated(0, before - 1);
        } else {
            model.fireTableDataChanged();
            if (chosen >= 0 && chosen < fields.size()) {
                table.setRowSelectionInterval(chosen, chosen);
            }
        }
        tell();
    }

    private void said(Optional<String> refused) {
        entered();
        refused.ifPresent(why -> about.show(List.of(new HandView.Said(true, "", why))));
    }

    /** What is to be known of the field that is chosen; what is wrong with it first. */
    private void tell() {
        int row = table.getSelectedRow();
        Optional<HandView.Said> other = wrong.entrySet().stream()
                .findFirst()
                .map(each -> new HandView.Said(true, each.getKey(), each.getValue()));
        boolean none = row < 0 || row >= fields.size();
        parts.chosen(none ? List.of() : fields.get(row).path());
        sketch.point(
                none ? "" : fields.get(row).row(),
                none ? List.of() : fields.get(row).path());
        if (none) {
            about.show(other.stream().toList());
            return;
        }
        KeyForm.Field field = fields.get(row);
        Optional<HandView.Said> own = Optional.ofNullable(wrong.get(field.place()))
                .map(sentence -> new HandView.Said(true, field.place(), sentence));
        String taken = Optional.ofNullable(assumed.get(field.place())).orElse(field.fallback());
        HandView.Said meaning = new HandView.Said(
                false,
                field.place(),
                String.join(
                        " ",
                        field.meaning(),
                        field.limits().isEmpty() ? "" : desk.say("window.model.range", field.limits()),
                        field.choices().isEmpty()
                                ? ""
                                : desk.say("window.model.choices", String.join(", ", field.choices())),
                        desk.say("window.model.example", field.example()),
                        taken.isEmpty() ? "" : desk.say("window.model.taken", taken, field.reason())));
        about.show(own.or(() -> other).map(said -> List.of(said, meaning)).orElse(List.of(meaning)));
    }

    private final class Model extends AbstractTableModel {

        private static final long serialVersionUID = 1;

        @Override
        public int getRowCount() {
            return fields.size();
        }

        @Override
        public int getColumnCount() {
            return 3;
        }

        @Override
        public String getColumnName(int column) {
            return desk.say(
                    column == 0 ? "window.model.key" : column == 1 ? "window.model.value" : "window.model.meaning");
        }

        @Override
        public boolean isCellEditable(int row, int column) {
            return column == 1;
        }

        @Override
        public Object getValueAt(int row, int column) {
            KeyForm.Field field = fields.get(row);
            return column == 0 ? field.place() : column == 1 ? field.written() : field.meaning();
        }

        @Override
        public void setValueAt(Object value, int row, int column) {
            KeyForm.Field field = fields.get(row);
            String typed = String.valueOf(value);
            if (!typed.equals(field.written())) {
                session.setAnyhow(field.path(), typed)
                        .ifPresent(refused -> about.show(List.of(new HandView.Said(true, field.place(), refused))));
            }
        }
    }

    private final class Cell extends DefaultTableCellRenderer {

        private static final long serialVersionUID = 1;

        @Override
        public Component getTableCellRendererComponent(
                JTable in, Object value, boolean selected, boolean focus, int row, int column) {
            KeyForm.Field field = fields.get(row);
            String taken = Optional.ofNullable(assumed.get(field.place())).orElse(field.fallback());
            boolean open = column == 1 && field.written().isEmpty();
            Object text = open ? taken.isEmpty() ? "" : desk.say("window.model.assumed", taken) : value;
            super.getTableCellRendererComponent(in, text, selected, focus, row, column);
            boolean faulty = wrong.containsKey(field.place());
            if (!selected) {
                setForeground(
                        faulty
                                ? desk.look().danger()
                                : open || column == 2 ? Look.quiet() : UIManager.getColor("Table.foreground"));
            }
            setToolTipText(wrong.getOrDefault(field.place(), field.meaning()));
            return this;
        }
    }
}
