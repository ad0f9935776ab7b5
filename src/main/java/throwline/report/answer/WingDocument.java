package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import throwline.report.document.Block;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Document;
import throwline.report.document.Table;
import throwline.report.document.Table.Column;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.study.WingSweep;
import throwline.units.Dimension;
import throwline.units.Quantity;

/** The bare wing over incidence as a table of coefficients. */
public final class WingDocument {

    private WingDocument() {}

    /**
     * The document of one sweep.
     *
     * @param model name of the model
     * @param sweep the result
     */
    public static Document of(String model, WingSweep sweep) {
        List<Column> columns = new ArrayList<>(Tables.numbers(
                "row.wing.incidence",
                "row.wing.lift",
                "row.wing.drag",
                "row.wing.induced",
                "row.wing.profile",
                "row.wing.rolling",
                "row.wing.yawing",
                "row.wing.pitching"));
        columns.add(Column.left(Text.say("row.wing.solved")));
        List<Block> blocks = new ArrayList<>();
        blocks.add(Tables.listing(columns, sweep.points(), WingDocument::row));
        sweep.stall().ifPresent(stall -> blocks.add(stall(stall)));
        sweep.warnings().forEach(note -> blocks.add(Paragraph.of(Text.of(note))));
        blocks.add(Paragraph.say("row.wing.meaning"));
        blocks.add(Paragraph.say("row.estimate"));
        return new Document(
                Text.say("row.wing.title", model, sweep.setUp()),
                List.of(Text.say(
                        "row.wing.sizes",
                        new Value.Plain(sweep.area(), 4),
                        length(sweep.span()),
                        length(sweep.meanChord()),
                        Value.speed(sweep.speed()))),
                blocks);
    }

    private static Table.Cells row(WingSweep.Point point) {
        return Table.Cells.of(
                new Value.Plain(Math.toDegrees(point.incidence()), 1),
                new Value.Plain(point.lift(), 3),
                new Value.Plain(point.drag(), 4),
                new Value.Plain(point.inducedDrag(), 4),
                new Value.Plain(point.profileDrag(), 4),
                new Value.Plain(point.rolling(), 4),
                new Value.Plain(point.yawing(), 4),
                new Value.Plain(point.pitching(), 4),
                Text.say(point.converged() ? "row.yes" : "row.no"));
    }

    private static Paragraph stall(WingSweep.Stall stall) {
        return Paragraph.say(
                "row.wing.stall",
                degrees(stall.onset()),
                new Value.Plain(stall.onset().lift(), 3),
                length(Math.abs(stall.at())),
                degrees(stall.checkedMaximum()),
                new Value.Plain(stall.checkedMaximum().lift(), 3),
                degrees(stall.plateau()),
                new Value.Plain(stall.plateau().lift(), 3));
    }

    private static Value length(double metres) {
        return new Value.Measure(new Quantity(metres, Dimension.LENGTH));
    }

    private static Value degrees(WingSweep.Mark mark) {
        return new Value.Plain(Math.toDegrees(mark.incidence()), 1);
    }
}
