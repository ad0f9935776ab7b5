package throwline.report.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Surface;
import throwline.report.EdgeThrow;
import throwline.report.Page;
import throwline.report.document.Figures;
import throwline.words.Words;

/** Where the surfaces stand in each set-up and what full stick adds, as angles and as measured at the trailing edge. */
final class SurfaceRows {

    private static final String ELEVATOR = "elevator";

    private final Model model;
    private final Page page;
    private final Words words;
    private final Figures figures;

    SurfaceRows(Model model, Page page, Words words) {
        this.model = model;
        this.page = page;
        this.words = words;
        this.figures = new Figures(page, words);
    }

    Grid grid() {
        Grid grid = new Grid(
                model.setUps().stream().map(setUp -> page.shown(setUp.name())).toList());
        for (Surface surface : model.wing().surfaces()) {
            List<String> angles = new ArrayList<>();
            List<String> edges = new ArrayList<>();
            List<String> stops = new ArrayList<>();
            for (SetUp setUp : model.setUps()) {
                double wanted = setUp.deflection(surface.name());
                double reached = surface.reached(wanted);
                angles.add(figures.deflection(reached));
                edges.add(reached == 0 ? "" : figures.edge(reached, edge(surface.name())));
                stops.add(reached == wanted ? "" : words.say("row.surface.stop"));
            }
            grid.row(page.shown(surface.name()), angles);
            grid.more(words.say("row.or"), edges);
            grid.more("", stops);
        }
        if (model.setUps().stream().anyMatch(setUp -> setUp.elevator() != 0)) {
            grid.row(
                    words.say("row.surface.elevator"),
                    model.setUps().stream()
                            .map(setUp -> figures.deflection(setUp.elevator()))
                            .toList());
            grid.more(
                    words.say("row.or"),
                    model.setUps().stream()
                            .map(setUp -> setUp.elevator() == 0 ? "" : figures.edge(setUp.elevator(), edge(ELEVATOR)))
                            .toList());
        }
        return grid;
    }

    /** One paragraph a stick. */
    String sticks() {
        StringBuilder text = new StringBuilder();
        stickLines().forEach(line -> text.append(Wrapped.paragraph("  ", "    ", line, page.width())));
        return text.toString();
    }

    /** One line a stick: what it moves and how far. */
    List<String> stickLines() {
        List<String> lines = new ArrayList<>();
        for (Stick stick : model.sticks()) {
            List<String> parts = new ArrayList<>();
            if (stick instanceof Stick.Roll roll) {
                new TreeMap<>(roll.throwsBySurface())
                        .forEach((surface, both) -> parts.add(words.say(
                                "row.stick.roll", surface, twice(surface, -both.up()), twice(surface, both.down()))));
            } else if (stick instanceof Stick.Pull pull) {
                if (pull.elevator() != 0) {
                    parts.add(words.say(
                            "row.stick.pull", words.say("row.surface.elevator"), twice(ELEVATOR, pull.elevator())));
                }
                for (Map.Entry<String, Double> moved : new TreeMap<>(pull.deflections()).entrySet()) {
                    parts.add(words.say("row.stick.pull", moved.getKey(), twice(moved.getKey(), moved.getValue())));
                }
            }
            lines.add(page.shown(stick.name() + ": " + String.join("; ", parts)));
        }
        return lines;
    }

    /** 12 degrees up (16 mm). */
    private String twice(String surface, double angle) {
        return words.say("row.both-ways", figures.deflection(angle), figures.edge(angle, edge(surface)));
    }

    /** Throws are measured at the root end of a surface. */
    private EdgeThrow edge(String name) {
        return model.wing()
                .surface(name)
                .map(surface -> new EdgeThrow(model.wing().throwChord(surface)))
                .orElseGet(() -> new EdgeThrow(model.tail().throwChord()));
    }
}
