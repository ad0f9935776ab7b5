package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import throwline.report.document.Block;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Document;
import throwline.report.document.Table;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.section.Airfoil;
import throwline.section.PolarRun;

/** The airfoils of the library: name, shape, Reynolds numbers at which they were measured. */
public final class AirfoilDocument {

    private static final int THOUSAND = 1000;

    private AirfoilDocument() {}

    /** These airfoils, one a line. */
    public static Document of(List<Airfoil> airfoils) {
        SourceList sources = new SourceList();
        List<Block> blocks = new ArrayList<>();
        blocks.add(Tables.listing(
                Tables.words(
                        "row.airfoil.name",
                        "row.airfoil.thick",
                        "row.airfoil.camber",
                        "row.airfoil.re",
                        "row.airfoil.measured",
                        "row.airfoil.source",
                        "row.airfoil.what"),
                airfoils,
                airfoil -> Table.Cells.of(
                        Text.name(airfoil.name()),
                        Value.of(airfoil.thickness(), Value.Kind.SHARE_TENTHS),
                        Value.of(airfoil.camber(), Value.Kind.SHARE_TENTHS),
                        Text.name(measuredAt(airfoil)),
                        Text.name(measured(airfoil)),
                        Text.name(sources.letters(airfoil)),
                        Text.name(airfoil.description()))));
        blocks.add(Paragraph.say("row.airfoil.codes"));
        sources.lines().forEach(line -> blocks.add(Paragraph.of(Text.name(line))));
        return new Document(Text.none(), List.of(), blocks);
    }

    private static String measured(Airfoil airfoil) {
        StringBuilder codes = new StringBuilder();
        add(codes, "D", airfoil, run -> run.points().stream().anyMatch(point -> point.drag() > 0));
        add(codes, "U", airfoil, run -> run.kind() == PolarRun.Kind.LIFT_UP);
        add(codes, "L", airfoil, run -> run.kind() == PolarRun.Kind.LIFT_DOWN);
        add(codes, "M", airfoil, run -> run.points().stream().anyMatch(point -> !Double.isNaN(point.moment())));
        add(codes, "F", airfoil, run -> run.deflection() != 0);
        return codes.toString();
    }

    private static void add(StringBuilder codes, String code, Airfoil airfoil, Predicate<PolarRun> holds) {
        if (airfoil.runs().stream().anyMatch(holds)) {
            codes.append(code);
        }
    }

    /** Rounded to thousands, each once. */
    private static String measuredAt(Airfoil airfoil) {
        TreeSet<Long> thousands = airfoil.runs().stream()
                .filter(run -> run.kind() == PolarRun.Kind.DRAG)
                .map(run -> Math.round(run.reynolds() / THOUSAND))
                .collect(Collectors.toCollection(TreeSet::new));
        return thousands.stream().map(String::valueOf).collect(Collectors.joining(" "));
    }
}
