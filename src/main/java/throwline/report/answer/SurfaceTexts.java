package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Surface;
import throwline.report.document.Block.Depth;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Block.Section;
import throwline.report.document.Comparison;
import throwline.report.document.Comparison.Below;
import throwline.report.document.Comparison.Cell;
import throwline.report.document.Text;
import throwline.report.document.Text.Join;
import throwline.report.document.Value;

/** Angles of the surfaces in each set-up and what full stick adds, as angles and as measured at the trailing edge. */
final class SurfaceTexts {

    private static final String ELEVATOR = "elevator";

    private final Model model;

    SurfaceTexts(Model model) {
        this.model = model;
    }

    /** Both as sections, each left out where it says nothing. */
    List<Section> sections(Text surfaces, Text sticks) {
        List<Section> sections = new ArrayList<>();
        Comparison table = table();
        if (!table.rows().isEmpty()) {
            sections.add(Section.of(surfaces, List.of(table)));
        }
        if (!model.sticks().isEmpty()) {
            sections.add(
                    Section.of(sticks, model.sticks().stream().map(this::stick).toList()));
        }
        return sections;
    }

    private Comparison table() {
        List<Comparison.Row> rows = new ArrayList<>();
        for (Surface surface : model.wing().surfaces()) {
            Function<SetUp, Double> reached = setUp -> surface.reached(setUp.deflection(surface.name()));
            rows.add(row(
                    Text.name(surface.name()),
                    surface.name(),
                    reached,
                    setUp -> reached.apply(setUp) == setUp.deflection(surface.name())
                            ? Text.none()
                            : Text.say("row.surface.stop")));
        }
        if (model.setUps().stream().anyMatch(setUp -> setUp.elevator() != 0)) {
            rows.add(row(Text.say("row.surface.elevator"), ELEVATOR, SetUp::elevator, setUp -> Text.none()));
        }
        Comparison.Group group = new Comparison.Group(
                Text.none(),
                Text.none(),
                List.of(),
                model.setUps().stream().map(SetUp::name).toList());
        return new Comparison(Text.none(), List.of(group), rows);
    }

    private Comparison.Row row(
            Text label, String surface, Function<SetUp, Double> angle, Function<SetUp, Text> remark) {
        return new Comparison.Row(
                "",
                Text.none(),
                label,
                Depth.ESSENTIAL,
                List.of(each(setUp -> Cell.of(Value.deflection(angle.apply(setUp))))),
                List.of(
                        Below.of(
                                Text.say("row.or"),
                                List.of(each(setUp ->
                                        angle.apply(setUp) == 0 ? Text.none() : edge(surface, angle.apply(setUp))))),
                        Below.of(Text.none(), List.of(each(remark)))));
    }

    private <T> List<T> each(Function<SetUp, T> cell) {
        return model.setUps().stream().map(cell).toList();
    }

    /** One line a stick: what it moves and how far. */
    private Paragraph stick(Stick stick) {
        List<Text> parts = new ArrayList<>();
        if (stick instanceof Stick.Roll roll) {
            parts.addAll(moves(roll));
        } else if (stick instanceof Stick.Pull pull) {
            if (pull.elevator() != 0) {
                parts.add(
                        Text.say("row.stick.pull", Text.say("row.surface.elevator"), twice(ELEVATOR, pull.elevator())));
            }
            for (Map.Entry<String, Double> moved : pull.deflections().entrySet()) {
                parts.add(Text.say("row.stick.pull", moved.getKey(), twice(moved.getKey(), moved.getValue())));
            }
        }
        return Paragraph.say("row.stick", stick.name(), Text.join(Join.SEMICOLON, parts));
    }

    /** Ailerons 12 degrees up (16 mm up) and 8 degrees down (10 mm down). */
    List<Text> moves(Stick.Roll stick) {
        List<Text> parts = new ArrayList<>();
        stick.throwsBySurface()
                .forEach((surface, both) -> parts.add(
                        Text.say("row.stick.roll", surface, twice(surface, -both.up()), twice(surface, both.down()))));
        return parts;
    }

    /** 12 degrees up (16 mm up). */
    Text twice(String surface, double angle) {
        return Text.say("row.both-ways", Value.deflection(angle), edge(surface, angle));
    }

    /** A deflection at the trailing edge of a surface or of the elevator; throws are measured at the root end. */
    Value edge(String name, double angle) {
        double chord = model.wing()
                .surface(name)
                .map(surface -> model.wing().throwChord(surface))
                .orElseGet(() -> model.tail().throwChord());
        return new Value.Edge(angle, chord);
    }
}
