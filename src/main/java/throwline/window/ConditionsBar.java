package throwline.window;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import throwline.model.Assumption;
import throwline.model.Pack;
import throwline.window.session.Session;

/** Conditions of every set-up: the pack, the field and its air. */
final class ConditionsBar extends JPanel {

    private static final long serialVersionUID = 1;

    private static final List<String> GROUNDS = List.of("hard", "short grass", "long grass");
    private static final List<String> GROUND = List.of("field", "ground");

    /** Values of the file that are typed, by the stem of their words. */
    private static final Map<String, List<String>> TYPED = typed();

    private final transient Session session;
    private final transient Consumer<Optional<String>> said;
    private final JComboBox<String> packs = new JComboBox<>();
    private final JComboBox<String> ground = new JComboBox<>(GROUNDS.toArray(String[]::new));
    private final Map<String, JTextField> fields = new LinkedHashMap<>();
    private boolean showing;
    private String read = "";

    private static Map<String, List<String>> typed() {
        Map<String, List<String>> all = new LinkedHashMap<>();
        all.put("wind", List.of("field", "wind"));
        all.put("temperature", List.of("field", "temperature"));
        all.put("height", List.of("field", "height above sea"));
        all.put("obstacle", List.of("field", "obstacle", "height"));
        all.put("length", List.of("field", "length"));
        return all;
    }

    /**
     * @param said takes what is wrong with what was typed
     */
    ConditionsBar(Desk desk, Session session, Consumer<Optional<String>> said) {
        this.session = session;
        this.said = said;
        setLayout(new javax.swing.BoxLayout(this, javax.swing.BoxLayout.X_AXIS));
        Line line = new Line(desk);
        packs.setName("pack");
        packs.addActionListener(e -> {
            if (!showing && packs.getSelectedItem() instanceof String name) {
                session.carry(name);
            }
        });
        line.named("window.condition.pack", packs);
        TYPED.forEach((stem, path) -> {
            JTextField field = new JTextField(5);
            field.setName("condition." + stem);
            field.setToolTipText(desk.say("window.condition." + stem + ".tip"));
            field.addActionListener(e -> put(path, field));
            field.addFocusListener(new FocusAdapter() {
                @Override
                public void focusLost(FocusEvent event) {
                    put(path, field);
                }
            });
            fields.put(stem, field);
            line.named("window.condition." + stem, field);
        });
        ground.setName("ground");
        ground.addActionListener(e -> {
            if (!showing && ground.getSelectedItem() instanceof String name) {
                said.accept(session.set(GROUND, name));
            }
        });
        line.named("window.condition.ground", ground).far();
        add(line);
        changed();
    }

    private void put(List<String> path, JTextField field) {
        if (!showing && !field.getText().equals(written(path).orElse(""))) {
            Optional<String> refused = session.set(path, field.getText());
            said.accept(refused);
        }
    }

    private Optional<String> written(List<String> path) {
        return session.document().text().at(path);
    }

    private Optional<String> assumed(List<String> path) {
        String place = String.join(".", path);
        return session.document().good().assumed().stream()
                .filter(each -> each.path().equals(place))
                .map(Assumption::value)
                .findFirst();
    }

    /** Reads the text of the file only where it is another one: a surface that is held changes nothing here. */
    void changed() {
        showing = true;
        List<String> names = session.model().packs().stream().map(Pack::name).toList();
        Combo.fill(packs, names, session.pack().name());
        String text = session.document().text().text();
        if (!text.equals(read)) {
            read = text;
            written();
        }
        showing = false;
    }

    private void written() {
        Combo.fill(ground, GROUNDS, written(GROUND).or(() -> assumed(GROUND)).orElse(GROUNDS.get(1)));
        fields.forEach((stem, field) -> {
            List<String> path = TYPED.getOrDefault(stem, List.of());
            if (!field.isFocusOwner() || !session.isHeld()) {
                String text = written(path).orElse("");
                if (!field.getText().equals(text)) {
                    field.setText(text);
                }
                field.putClientProperty(
                        "JTextField.placeholderText", assumed(path).orElse(""));
            }
        });
    }

    /** Lists in boxes. */
    static final class Combo {
        private Combo() {}

        static void fill(JComboBox<String> box, List<String> names, String chosen) {
            boolean same = box.getItemCount() == names.size();
            for (int i = 0; same && i < names.size(); i++) {
                same = names.get(i).equals(box.getItemAt(i));
            }
            if (!same) {
                box.removeAllItems();
                names.forEach(box::addItem);
                box.setMaximumSize(box.getPreferredSize());
            }
            if (!chosen.equals(box.getSelectedItem())) {
                box.setSelectedItem(chosen);
            }
        }
    }

    JComponent first() {
        return packs;
    }
}
