package throwline.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTextField;
import throwline.model.Servo;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.report.document.Figures;
import throwline.report.document.Value;
import throwline.window.session.Movable;
import throwline.window.session.Session;
import throwline.window.session.StickMix;
import throwline.window.session.StickMix.Way;

/**
 * Form of what one stick moves, typed in degrees, millimetres or per cent of the travel, and the set-ups in which it
 * works.
 */
final class StickForm {

    private static final int NAMES = 170;

    private final Desk desk;
    private final Session session;
    private final Figures figures;
    private final String name;
    private final StickMix mix;
    private final Consumer<Optional<String>> said;
    private final Column column = new Column(8);
    private final List<Movable> movables;
    private final List<SetUp> setUps;
    private final boolean rolls;
    private final List<Throw> rows = new ArrayList<>();
    private final List<JCheckBox> boxes = new ArrayList<>();
    private final JComponent component;

    /**
     * A line to type.
     *
     * @param surface what moves
     * @param way where it goes
     * @param field typed
     * @param shown the same in other units
     */
    private record Throw(Movable surface, Way way, JTextField field, JLabel shown) {}

    StickForm(Desk desk, Session session, Figures figures, String name, Consumer<Optional<String>> said) {
        this.desk = desk;
        this.session = session;
        this.figures = figures;
        this.name = name;
        this.said = said;
        mix = new StickMix(session, name);
        movables = mix.movables();
        setUps = session.model().setUps();
        rolls = mix.stick().filter(Stick.Roll.class::isInstance).isPresent();
        column.add(Look.bold(new JLabel(name)));
        column.add(new JLabel(desk.say(rolls ? "window.stick.does.roll" : "window.stick.does.pull")));
        for (Movable each : movables) {
            for (Way way : rolls ? List.of(Way.UP, Way.DOWN) : List.of(Way.BOTH)) {
                row(each, way);
            }
        }
        JLabel hint = new JLabel(Sentence.broken(desk.say(rolls ? "window.stick.hint" : "window.stick.hint.pull")));
        hint.setForeground(Look.quiet());
        column.add(hint);
        column.add(Look.bold(new JLabel(desk.say("window.stick.in"))));
        for (SetUp setUp : setUps) {
            JCheckBox box = new JCheckBox(setUp.name());
            box.setName("stick.in." + setUp.name());
            box.addActionListener(e -> {
                said.accept(mix.in(setUp.name(), box.isSelected()));
                changed();
            });
            boxes.add(box);
            column.add(box);
        }
        component = column.scrolled();
        changed();
    }

    private void row(Movable surface, Way way) {
        String called = surface.name().equals(Servo.ELEVATOR) ? Servo.ELEVATOR : surface.name();
        String label = desk.say("window.stick." + way.name().toLowerCase(java.util.Locale.ROOT), called);
        JTextField field = new JTextField(9);
        field.setName("stick." + surface.name() + "." + way.name().toLowerCase(java.util.Locale.ROOT));
        field.getAccessibleContext().setAccessibleName(label);
        JLabel shown = new JLabel(" ");
        shown.setForeground(Look.quiet());
        Throw row = new Throw(surface, way, field, shown);
        field.addActionListener(e -> put(row));
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                put(row);
            }
        });
        rows.add(row);
        JLabel named = new JLabel(label);
        named.setLabelFor(field);
        named.setPreferredSize(new Dimension(UIScale.scale(NAMES), named.getPreferredSize().height));
        named.setMinimumSize(named.getPreferredSize());
        field.setMaximumSize(field.getPreferredSize());
        column.add(new Line(desk).with(named).with(field).with(shown).far());
    }

    private void put(Throw row) {
        if (!row.field().getText().equals(mix.written(row.surface(), row.way()))) {
            Optional<String> refused =
                    mix.put(row.surface(), row.way(), row.field().getText());
            said.accept(refused);
            if (refused.isEmpty()) {
                changed();
            }
        }
    }

    JComponent component() {
        return component;
    }

    /** True where this form still fits the stick of that name. */
    boolean isOf(String other) {
        return name.equals(other)
                && mix.movables().equals(movables)
                && rolls == mix.stick().filter(Stick.Roll.class::isInstance).isPresent()
                && session.model().setUps().stream()
                        .map(SetUp::name)
                        .toList()
                        .equals(setUps.stream().map(SetUp::name).toList());
    }

    /** Shows what the file has now. */
    void changed() {
        for (Throw row : rows) {
            String written = mix.written(row.surface(), row.way());
            boolean typing = row.field().isFocusOwner() && session.isHeld();
            if (!typing && !row.field().getText().equals(written)) {
                row.field().setText(written);
            }
            row.shown()
                    .setText(mix.added(row.surface(), row.way())
                            .map(angle -> shown(row.surface(), angle))
                            .orElse(desk.say("window.stick.not")));
        }
        List<SetUp> now = session.model().setUps();
        for (int i = 0; i < boxes.size() && i < now.size(); i++) {
            boxes.get(i).setSelected(mix.worksIn(now.get(i)));
        }
    }

    private String shown(Movable surface, double angle) {
        double travel = angle < 0 ? surface.up() : surface.down();
        return angle == 0 || travel == 0
                ? desk.say("row.neutral")
                : desk.say(
                        "window.stick.at",
                        figures.show(Value.of(angle, Value.Kind.DEFLECTION_TENTHS)),
                        figures.show(new Value.Edge(angle, surface.chord())),
                        Math.round(100 * Math.abs(angle) / travel) + " %");
    }
}
