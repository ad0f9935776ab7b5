package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.report.CheckAnswer;
import throwline.report.document.Block;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Document;
import throwline.report.document.Role;
import throwline.report.document.Table;
import throwline.report.document.Table.Column;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.units.Dimension;
import throwline.words.Message;

/** A model as it was read, what is unusual about it and what was assumed. */
public final class CheckDocument {

    private CheckDocument() {}

    /** The document. */
    public static Document of(CheckAnswer answer) {
        Model model = answer.model();
        List<Text> under = new ArrayList<>();
        under.add(Text.say(
                "check.wing",
                length(model.wing().span()),
                Value.measure(model.wing().area(), Dimension.AREA),
                length(model.wing().meanAerodynamicChord())));
        model.packs().forEach(pack -> under.add(pack(model, pack)));
        List<Block> blocks = new ArrayList<>();
        if (answer.unusual().isEmpty()) {
            blocks.add(Paragraph.say("check.usual"));
        }
        Sections.add(blocks, "check.unusual", said(answer.unusual()));
        blocks.addAll(
                new SurfaceTexts(model).sections(Text.say("row.section.surfaces"), Text.say("row.section.sticks")));
        Sections.add(blocks, "row.section.notes", said(answer.notes()));
        if (!answer.outlines().isEmpty()) {
            Sections.add(blocks, "check.outlines", List.of(outlines(answer), Paragraph.say("check.outlines.meaning")));
        }
        List<CheckAnswer.Assumed> assumed = answer.assumed();
        if (assumed.isEmpty()) {
            blocks.add(Paragraph.say("check.complete"));
        }
        Sections.add(
                blocks,
                Text.say(
                        assumed.size() == 1 ? "row.section.assumed.one" : "row.section.assumed",
                        Value.count(assumed.size())),
                assumed.stream()
                        .map(a -> Paragraph.of(
                                Role.ASSUMPTION, Text.say("check.assumed", a.path(), a.value(), a.reason())))
                        .toList());
        return new Document(Text.name(model.name()), under, blocks);
    }

    private static Text pack(Model model, Pack pack) {
        double share =
                (pack.balance() - model.wing().meanLeadingEdge()) / model.wing().meanAerodynamicChord();
        return Text.say(
                "check.pack",
                pack.name(),
                Value.measure(pack.mass(), Dimension.MASS),
                length(pack.balance()),
                Value.measure(share, Dimension.FRACTION),
                Value.measure(pack.mass() / model.wing().area(), Dimension.WING_LOADING));
    }

    private static Table outlines(CheckAnswer answer) {
        List<Column> columns = new ArrayList<>(Tables.words("row.airfoil.name"));
        columns.addAll(Tables.numbers(
                "row.airfoil.thick",
                "row.airfoil.camber",
                "check.outlines.re",
                "check.outlines.zero",
                "check.outlines.lift",
                "check.outlines.stall"));
        return Tables.listing(
                columns,
                answer.outlines(),
                air -> Table.Cells.of(
                        Text.name(air.airfoil()),
                        Value.of(air.thickness(), Value.Kind.SHARE_TENTHS),
                        Value.of(air.camber(), Value.Kind.SHARE_TENTHS),
                        new Value.Plain(air.reynolds(), 0),
                        Value.of(air.zeroLiftAngle(), Value.Kind.ANGLE_TENTHS),
                        new Value.Plain(air.maxLift(), 2),
                        Value.of(air.stallAngle(), Value.Kind.ANGLE_TENTHS)));
    }

    private static List<Paragraph> said(List<Message> notes) {
        return notes.stream().map(note -> Paragraph.of(Text.of(note))).toList();
    }

    private static Value length(double metres) {
        return Value.measure(metres, Dimension.LENGTH);
    }
}
