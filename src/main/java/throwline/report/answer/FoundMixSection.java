package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.model.Model;
import throwline.model.Surface;
import throwline.report.BenchThrow;
import throwline.report.document.Block;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Block.Section;
import throwline.report.document.Table;
import throwline.report.document.Table.Column;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.sizing.MixCurve;
import throwline.study.FindResult.TrimFound;
import throwline.study.Headline;

/** An elevator mix as points in degrees, at the trailing edge and in per cent of the travel. */
final class FoundMixSection {

    private final Model model;
    private final TrimFound answer;
    private final SurfaceTexts surfaces;

    FoundMixSection(Model model, TrimFound answer) {
        this.model = model;
        this.answer = answer;
        surfaces = new SurfaceTexts(model);
    }

    Section section() {
        List<Block> blocks = new ArrayList<>();
        answer.shortOf().ifPresent(note -> blocks.add(Paragraph.of(Text.of(note))));
        answer.curve().ifPresent(curve -> curve(blocks, curve));
        if (answer.curve().isEmpty() && answer.shortOf().isEmpty()) {
            blocks.add(Paragraph.say(((Headline.Unknown) answer.whole()).why()));
        }
        Text wanted =
                Text.say("find.wanted.trim", answer.from().name(), answer.to().name());
        boolean flies = answer.curve().isPresent();
        return Section.of(FindDocument.outcome(wanted, answer.shortOf().isEmpty() && flies, flies), blocks);
    }

    private void curve(List<Block> blocks, MixCurve curve) {
        Optional<Headline.Known> whole = answer.whole().known();
        boolean eitherWay = whole.map(Headline.Known::mayGoEitherWay).orElse(true);
        double chord = model.tail().throwChord();
        blocks.add(Paragraph.say("find.mix.speed", Value.speed(curve.speed())));
        blocks.add(elevator(curve, eitherWay));
        blocks.add(surfaces(curve));
        whole.ifPresent(known ->
                blocks.add(Paragraph.say("find.mix.band", new Value.LengthUnit(), new Value.EdgeBand(known, chord))));
        blocks.add(Paragraph.say(eitherWay ? "find.mix.start-none" : "find.mix.start"));
        blocks.add(Paragraph.say("find.mix.straight", Value.of(curve.straightError(), Value.Kind.ANGLE_STEP)));
        for (MixCurve.AtSpeed other : curve.otherSpeeds()) {
            blocks.add(Paragraph.say(
                    "find.mix.other",
                    Value.speed(other.speed()),
                    Value.deflection(other.elevator()),
                    new Value.Edge(other.elevator(), chord)));
        }
        if (answer.to().elevator() != 0) {
            blocks.add(Paragraph.say(
                    "find.mix.programmed",
                    answer.to().name(),
                    new Value.Edge(answer.to().elevator(), chord)));
        }
        blocks.add(Paragraph.say("find.mix.power"));
    }

    private Table elevator(MixCurve curve, boolean eitherWay) {
        List<Column> columns = Tables.numbers(
                "find.mix.lever",
                "find.mix.elevator",
                "find.mix.distance",
                "find.mix.travel",
                eitherWay ? "find.mix.first-none" : "find.mix.first",
                "find.mix.distance",
                "find.mix.travel");
        return Tables.listing(columns, curve.points(), point -> {
            List<Text> cells = new ArrayList<>(List.of(lever(point)));
            double chord = model.tail().throwChord();
            for (double angle : new double[] {point.elevator(), answer.start(point)}) {
                cells.add(Value.deflection(angle));
                cells.add(new Value.Edge(angle, chord));
                cells.add(Value.share(BenchThrow.ofElevator(model, "", angle).share()));
            }
            return Table.Cells.of(cells);
        });
    }

    private static Value lever(MixCurve.Point point) {
        return Value.of(point.lever(), Value.Kind.LEVER);
    }

    /** Where the surfaces stand at the points of the lever. */
    private Table surfaces(MixCurve curve) {
        List<Surface> moved = FoundSetUpSection.movable(model).stream()
                .filter(s -> answer.to().deflection(s.name()) != answer.from().deflection(s.name()))
                .toList();
        List<Column> columns = new ArrayList<>(Tables.numbers("find.mix.lever"));
        for (Surface surface : moved) {
            columns.add(Column.right(Text.name(surface.name())));
            columns.addAll(Tables.numbers("find.mix.distance", "find.mix.travel"));
        }
        return Tables.listing(columns, curve.points(), point -> {
            List<Text> cells = new ArrayList<>(List.of(lever(point)));
            for (Surface surface : moved) {
                double from = surface.reached(answer.from().deflection(surface.name()));
                double to = surface.reached(answer.to().deflection(surface.name()));
                double angle = from + point.lever() * (to - from);
                cells.add(Value.deflection(angle));
                cells.add(surfaces.edge(surface.name(), angle));
                cells.add(Value.share(BenchThrow.of(model, surface, angle).share()));
            }
            return Table.Cells.of(cells);
        });
    }
}
