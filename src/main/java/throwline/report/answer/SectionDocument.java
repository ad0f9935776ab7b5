package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import throwline.report.document.Block;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Document;
import throwline.report.document.Table;
import throwline.report.document.Table.Column;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.study.SectionFlow;
import throwline.study.SectionSweep;

/** Answer on one section over the angles of ordinary flight as a table of coefficients. */
public final class SectionDocument {

    /** Angles of the table, degrees; all angles are in the JSON. */
    private static final int FROM = -16;

    private static final int TO = 30;
    private static final int STEP = 2;

    private SectionDocument() {}

    /**
     * The document of one sweep.
     *
     * @param sweep the section over angle
     * @param flows air along its outline; none where not known
     */
    public static Document of(SectionSweep sweep, List<SectionFlow> flows) {
        List<Column> columns = new ArrayList<>(Tables.numbers(
                "row.section.angle",
                "row.section.lift",
                "row.section.drag",
                "row.section.moment",
                "row.section.hinge"));
        columns.add(Column.left(Text.say("row.section.basis")));
        Table table = Tables.listing(
                columns,
                sweep.points().stream().filter(SectionDocument::isShown).toList(),
                point -> Table.Cells.of(
                        new Value.Plain(Math.toDegrees(point.angle()), 0),
                        new Value.Plain(point.lift(), 3),
                        new Value.Plain(point.drag(), 4),
                        new Value.Plain(point.moment(), 3),
                        new Value.Plain(point.hinge(), 3),
                        Text.say("row.basis." + point.basis().name().toLowerCase(Locale.ROOT))));
        return new Document(
                Text.say(
                        "row.section.title",
                        sweep.airfoil(),
                        new Value.Plain(sweep.reynolds(), 0),
                        Value.of(sweep.flap(), Value.Kind.ANGLE_TENTHS),
                        new Value.Plain(100 * sweep.flapChord(), 0)),
                List.of(Text.say(
                        "row.section.limits",
                        new Value.Plain(sweep.maxLift(), 2),
                        Value.of(sweep.stallAngle(), Value.Kind.ANGLE_TENTHS),
                        new Value.Plain(sweep.minLift(), 2))),
                blocks(table, flows));
    }

    private static List<Block> blocks(Table table, List<SectionFlow> flows) {
        List<Block> blocks = new ArrayList<>(List.of(table, Paragraph.say("row.section.meaning")));
        if (flows.isEmpty()) {
            blocks.add(Paragraph.say("row.flow.none"));
        } else {
            Sections.add(blocks, Text.say("row.flow.title"), List.of(air(flows), Paragraph.say("row.flow.meaning")));
        }
        blocks.add(Paragraph.say("row.estimate"));
        return blocks;
    }

    private static Table air(List<SectionFlow> flows) {
        return Tables.listing(
                Tables.numbers(
                        "row.section.angle",
                        "row.flow.top.laminar",
                        "row.flow.top.bubble",
                        "row.flow.top.off",
                        "row.flow.bottom.laminar",
                        "row.flow.bottom.bubble",
                        "row.flow.bottom.off"),
                flows,
                flow -> Table.Cells.of(
                        new Value.Plain(Math.toDegrees(flow.angle()), 0),
                        share(OptionalDouble.of(flow.top().laminarTo())),
                        share(flow.top().bubbleTo()),
                        share(flow.top().offFrom()),
                        share(OptionalDouble.of(flow.bottom().laminarTo())),
                        share(flow.bottom().bubbleTo()),
                        share(flow.bottom().offFrom())));
    }

    private static Text share(OptionalDouble share) {
        return share.isPresent() ? new Value.Plain(100 * share.getAsDouble(), 0) : Text.name("-");
    }

    private static boolean isShown(SectionSweep.Point point) {
        double degrees = Math.toDegrees(point.angle());
        long whole = Math.round(degrees);
        return Math.abs(degrees - whole) <= 1e-6 && whole >= FROM && whole <= TO && whole % STEP == 0;
    }
}
