package throwline.window;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import throwline.window.session.PartEdits;
import throwline.window.session.PartEdits.Kind;
import throwline.window.session.Session;
import throwline.window.session.StationEdits;

/** Buttons that add packs, surfaces and stations of the wing, and rename or remove the one that the chosen value belongs to. */
final class PartBar {

    private final Desk desk;
    private final PartEdits edits;
    private final StationEdits stations;
    private final Consumer<Optional<String>> said;
    private final Line line;
    private final JLabel of = new JLabel(" ");
    private final JButton rename;
    private final JButton remove;
    private Optional<Kind> kind = Optional.empty();
    private String name = "";
    private OptionalInt station = OptionalInt.empty();

    PartBar(Desk desk, Session session, Consumer<Optional<String>> said) {
        this.desk = desk;
        this.said = said;
        edits = new PartEdits(session);
        stations = new StationEdits(session);
        rename = Line.tight(Line.button(
                desk,
                "window.part.rename",
                e -> kind.ifPresent(k -> named("window.list.rename.ask", name, to -> edits.rename(k, name, to)))));
        remove = Line.tight(Line.button(desk, "window.part.remove", e -> remove()));
        line = new Line(desk)
                .small("window.part.pack", e -> named("window.part.ask.pack", "", to -> edits.add(Kind.PACK, to)))
                .small(
                        "window.part.surface",
                        e -> named("window.part.ask.surface", "", to -> edits.add(Kind.SURFACE, to)))
                .small("window.part.station", e -> said.accept(stations.add(station)))
                .far()
                .with(of)
                .with(rename)
                .with(remove);
        chosen(List.of());
    }

    private void remove() {
        kind.ifPresent(k -> said.accept(edits.remove(k, name)));
        station.ifPresent(number -> said.accept(stations.remove(number)));
    }

    private void named(String question, String proposal, Function<String, Optional<String>> action) {
        String typed = desk.ask(line, desk.say(question), proposal);
        if (!typed.isEmpty()) {
            said.accept(action.apply(typed));
        }
    }

    JComponent component() {
        return line;
    }

    /** Another value of the file is chosen. */
    void chosen(List<String> path) {
        kind = PartEdits.kindOf(path);
        name = kind.map(k -> PartEdits.nameIn(k, path)).orElse("");
        station = StationEdits.stationOf(path);
        boolean chosen = kind.isPresent() || station.isPresent();
        String part = station.isPresent() ? desk.say("window.part.station.number", station.getAsInt()) : name;
        of.setText(chosen ? desk.say("window.part.chosen", part) : " ");
        of.setVisible(chosen);
        rename.setVisible(kind.isPresent());
        remove.setVisible(chosen);
    }
}
