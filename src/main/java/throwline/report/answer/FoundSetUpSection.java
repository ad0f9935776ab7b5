package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.model.Surface;
import throwline.report.BenchThrow;
import throwline.report.document.Block;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Block.Section;
import throwline.report.document.Table;
import throwline.report.document.Table.Column;
import throwline.report.document.Text;
import throwline.report.document.Text.Join;
import throwline.report.document.Value;
import throwline.sizing.CandidateFlight;
import throwline.sizing.FoundSetUp;
import throwline.sizing.FoundSetUp.Moved;
import throwline.sizing.FoundSetUp.OneDegree;
import throwline.sizing.SetUpWants;
import throwline.sizing.SurfaceGroups;
import throwline.study.FindResult;
import throwline.study.FindResult.SetUpFound;
import throwline.study.FindResult.ThrowBand;
import throwline.study.Headline;

/** Section on where flaps and ailerons must stand. */
final class FoundSetUpSection {

    /** A change of speed that two decimals do not show, m/s. */
    private static final double UNSEEN = 0.005;

    /** Nearer to the stall than this nothing is left for bumps and turns (PRACTICE, methods manual 17.7). */
    private static final double LEAST_MARGIN = 1.2;

    private final Model model;
    private final SetUpWants wants;
    private final SetUpFound answer;
    private final FoundSetUp found;

    FoundSetUpSection(FindResult result, SetUpFound answer) {
        model = result.model();
        wants = result.question().setUp().orElseThrow();
        this.answer = answer;
        found = answer.found();
    }

    Section section() {
        List<Block> blocks = new ArrayList<>();
        if (!found.met()) {
            blocks.add(Paragraph.say("find.stopped", FindDocument.limits(found.why())));
        }
        blocks.add(bench(model, found.trial().setUp()));
        answer.descentAngle()
                .ifPresent(angle -> blocks.add(
                        angle instanceof Headline.Unknown unknown
                                ? Paragraph.say(unknown.why())
                                : Paragraph.say(
                                        "find.setup.descent",
                                        FindDocument.likely(angle, Value.Kind.ANGLE_TENTHS),
                                        wantedSpeed())));
        blocks.add(Paragraph.say("find.setup.stall", FindDocument.likely(answer.stallSpeed(), Value.Kind.SPEED)));
        wants.descent().filter(d -> found.trial().stall().isPresent()).ifPresent(d -> blocks.add(margin(d.speed())));
        elevator().ifPresent(blocks::add);
        found.oneDegree().forEach(one -> blocks.add(oneDegree(one)));
        answer.throwBand().ifPresent(band -> blocks.add(sure(band)));
        if (!Double.isNaN(reached(found.most()))) {
            blocks.add(reach());
        }
        Text heading = FindDocument.outcome(
                wanted(), found.met(), found.trial().fault().isEmpty());
        return Section.of(heading, blocks);
    }

    private Value wantedSpeed() {
        return Value.speed(wants.descent().orElseThrow().speed());
    }

    private static Value tenths(double angle) {
        return Value.of(angle, Value.Kind.ANGLE_TENTHS);
    }

    private Text wanted() {
        Text stall = wants.stallSpeed().<Text>map(Value::speed).orElse(Text.none());
        if (wants.descent().isEmpty()) {
            return Text.say("find.wanted.stall", stall);
        }
        Value angle = tenths(wants.descent().get().angle());
        return wants.stallSpeed().isPresent()
                ? Text.say("find.wanted.both", angle, wantedSpeed(), stall)
                : Text.say("find.wanted.descent", angle, wantedSpeed());
    }

    /** Surfaces of the wing that can move. */
    static List<Surface> movable(Model model) {
        return model.wing().surfaces().stream()
                .filter(s -> s.travelUp() > 0 || s.travelDown() > 0)
                .toList();
    }

    /** A row a surface: degrees, distance, share of its travel. */
    static Table bench(Model model, SetUp setUp) {
        SurfaceTexts surfaces = new SurfaceTexts(model);
        List<Column> columns = new ArrayList<>(List.of(Column.left(Text.none())));
        columns.addAll(Tables.words("find.column.angle", "find.column.distance", "find.column.travel"));
        return Tables.listing(columns, movable(model), surface -> {
            BenchThrow row = BenchThrow.of(model, surface, setUp.deflection(surface.name()));
            boolean neutral = row.angle() == 0;
            return Table.Cells.of(
                    Text.name(surface.name()),
                    Value.deflection(row.angle()),
                    neutral ? Text.none() : surfaces.edge(surface.name(), row.angle()),
                    neutral ? Text.none() : Value.share(row.share()));
        });
    }

    private Paragraph margin(double speed) {
        double ratio = speed / found.trial().stallSpeed();
        boolean small = ratio >= 1 && ratio < LEAST_MARGIN;
        return Paragraph.say(
                small ? "find.setup.margin-small" : "find.setup.margin", Value.speed(speed), new Value.Plain(ratio, 2));
    }

    private Optional<Paragraph> elevator() {
        double chord = model.tail().throwChord();
        return answer.elevatorChange()
                .flatMap(Headline::known)
                .map(known -> Paragraph.say(
                        BalanceSection.stays(known.value(), chord)
                                ? "find.setup.elevator-stays"
                                : "find.setup.elevator",
                        model.reference().name(),
                        wantedSpeed(),
                        new Value.Edge(known.value(), chord),
                        Value.deflection(known.value()),
                        known.startingMix()
                                .<Text>map(mix -> new Value.Edge(mix, chord))
                                .orElse(Text.say("row.none"))));
    }

    private static Paragraph oneDegree(OneDegree one) {
        List<Text> parts = new ArrayList<>();
        one.angle()
                .ifPresent(a -> parts.add(
                        Text.say(a >= 0 ? "find.steeper" : "find.flatter", Value.of(a, Value.Kind.ANGLE_STEP))));
        String change = one.stallSpeed() >= 0 ? "find.stalls-faster" : "find.stalls-slower";
        parts.add(Text.say(
                Math.abs(one.stallSpeed()) < UNSEEN ? "find.stalls-same" : change,
                Value.of(one.stallSpeed(), Value.Kind.SPEED_STEP)));
        String key = one.surface() == Moved.FLAPS
                ? (one.step() > 0 ? "find.degree.flaps-down" : "find.degree.flaps-up")
                : (one.step() > 0 ? "find.degree.ailerons-down" : "find.degree.ailerons-up");
        return Paragraph.say(key, Text.join(Join.COMMA, parts));
    }

    private Paragraph sure(ThrowBand band) {
        SurfaceGroups groups = SurfaceGroups.of(model);
        return sure((found.lineOf() == Moved.FLAPS ? groups.flaps() : groups.ailerons()).get(0), band);
    }

    /** How sure the throw of a surface is. */
    static Paragraph sure(Surface surface, ThrowBand band) {
        String key = band.lowOpen() && band.highOpen()
                ? "find.sure.nothing"
                : band.lowOpen() || band.highOpen() ? "find.sure.open" : "find.sure";
        return Paragraph.say(key, surface.name(), Value.deflection(band.low()), Value.deflection(band.high()));
    }

    private double reached(CandidateFlight trial) {
        return wants.descent().isPresent() ? trial.angle() : trial.stallSpeed();
    }

    private Paragraph reach() {
        CandidateFlight least = found.least();
        CandidateFlight most = found.most();
        Text with = Text.join(
                Join.COMMA,
                movable(model),
                s -> Text.say(
                        "find.surface", s.name(), Value.deflection(most.setUp().deflection(s.name()))));
        Text stopped = FindDocument.limits(found.stoppedBy());
        return wants.descent()
                .map(d -> Paragraph.say(
                        "find.reach.descent",
                        Value.speed(d.speed()),
                        tenths(least.angle()),
                        tenths(most.angle()),
                        with,
                        stopped))
                .orElseGet(() -> Paragraph.say(
                        "find.reach.stall",
                        Value.speed(least.stallSpeed()),
                        Value.speed(most.stallSpeed()),
                        with,
                        stopped));
    }
}
