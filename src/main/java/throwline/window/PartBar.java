package throwline.window;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import throwline.window.session.PartEdits;
import throwline.window.session.PartEdits.Kind;
import throwline.window.session.Session;

/** Buttons that add packs and surfaces, and rename or remove the one that the chosen value belongs to. */
final class PartBar {

    private final Desk desk;
    private final PartEdits edits;
    private final Consumer<Optional<String>> said;
    private final Line line;
    private final JLabel of = new JLabel(" ");
    private final JButton rename;
    private final JButton remove;
    private Optional<Kind> kind = Optional.empty();
    private String name = "";

    PartBar(Desk desk, Session session, Consumer<Optional<String>> said) {
        this.desk = desk;
        this.said = said;
        edits = new PartEdits(session);
        rename = Line.tight(Line.button(
                desk,
                "window.part.rename",
                e -> kind.ifPresent(k -> named("window.list.rename.ask", name, to -> edits.rename(k, name, to)))));
        remove = Line.tight(Line.button(
                desk, "window.part.remove", e -> kind.ifPresent(k -> said.accept(edits.remove(k, name)))));
        line = new Line(desk)
                .small("window.part.pack", e -> named("window.part.ask.pack", "", to -> edits.add(Kind.PACK, to)))
                .small(
                        "window.part.surface",
                        e -> named("window.part.ask.surface", "", to -> edits.add(Kind.SURFACE, to)))
                .far()
                .with(of)
                .with(rename)
                .with(remove);
        chosen(List.of());
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
        of.setText(kind.isPresent() ? desk.say("window.part.chosen", name) : " ");
        of.setVisible(kind.isPresent());
        rename.setVisible(kind.isPresent());
        remove.setVisible(kind.isPresent());
    }
}
