package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import throwline.model.Propeller;
import throwline.report.chart.Charts;
import throwline.report.chart.FlyCharts;
import throwline.report.document.Block;
import throwline.report.document.Block.Medium;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Block.Pictures;
import throwline.report.document.Block.Section;
import throwline.report.document.Document;
import throwline.report.document.Figures;
import throwline.report.document.Role;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.section.AirfoilLibrary;
import throwline.study.BeyondMeasured;
import throwline.study.Comparison.PackResult;
import throwline.study.FlightQuantity;
import throwline.study.FlyResult;
import throwline.study.FlyResult.Descents;
import throwline.study.FlyResult.RollDetail;
import throwline.study.FlyResult.Sensitivity;
import throwline.study.Headline;
import throwline.study.Learnt;
import throwline.study.SetUpResult;
import throwline.units.Dimension;
import throwline.words.Message;

/** Answer on one set-up in depth. */
public final class FlyDocument {

    /** Yawing moment over rolling moment scale below which the nose is said to stay. */
    private static final double STEADY_NOSE = 5e-4;

    private final FlyResult result;
    private final SetUpResult glance;
    private final List<Block> blocks = new ArrayList<>();

    private FlyDocument(FlyResult result) {
        this.result = result;
        glance = result.glance();
    }

    /**
     * The document.
     *
     * @param result what was found
     * @param learnt what flights told; empty where they put nothing right
     * @param charts draw the set-up
     * @param figures write the numbers in pictures
     * @param overSpeed draws what happens over airspeed
     * @param airfoils where the model's airfoils are found
     * @param file the model file
     */
    public static Document of(
            FlyResult result,
            Optional<Learnt> learnt,
            Supplier<Charts> charts,
            Figures figures,
            Supplier<FlyCharts> overSpeed,
            AirfoilLibrary airfoils,
            Block.Enclosed file) {
        FlyDocument document = new FlyDocument(result);
        learnt.map(l -> new LearntNotes(l).contradictions())
                .filter(said -> !said.isEmpty())
                .ifPresent(said -> document.blocks.add(Section.of(Text.say("learn.section.contradictions"), said)));
        document.inShort();
        PackResult pack = new PackResult(result.pack(), List.of(result.glance()));
        document.pictures(
                "page.setup.picture", () -> charts.get().setUps(result.model(), pack, airfoils, figures, "s-"));
        document.numbers();
        document.pictures("page.over-speed", () -> overSpeed.get().onPage(result, "f-"));
        document.sections();
        document.blocks.add(file);
        Text title = Text.say(
                "fly.title", result.model().name(), result.glance().setUp().name());
        List<Text> under = new ArrayList<>(List.of(Flown.packLine(result.pack())));
        learnt.ifPresent(l -> under.add(LearntNotes.onTop(l)));
        return new Document(title, under, document.blocks);
    }

    private void pictures(String heading, Pictures.Source source) {
        blocks.add(Section.of(Text.say(heading), List.of(new Pictures(source))).on(Medium.PAGE));
    }

    private void inShort() {
        blocks.add(Section.of(Text.say("page.verdict"), InShortSection.of(result.model(), List.of(glance)))
                .as(Role.HEADLINE));
    }

    private void numbers() {
        Flown flown =
                new Flown(Text.none(), result.model(), result.pack(), List.of(glance), Text.say("page.air.field"));
        blocks.add(new ComparisonRows(List.of(flown))
                .comparison(Text.say("page.glance"), each -> Text.none(), each -> List.of()));
        blocks.add(Section.of(Text.none(), List.of(Paragraph.of(Role.QUIET, Text.say("row.legend.likely"))))
                .on(Medium.TERMINAL));
    }

    private void sections() {
        result.descents().ifPresent(d -> Sections.fold(blocks, "fly.section.path", path(d)));
        LandingSection landing = new LandingSection(result);
        Sections.fold(blocks, "fly.section.landing", landing.blocks());
        Sections.fold(blocks, "fly.section.bumps", landing.bumps());
        Sections.fold(blocks, "fly.section.power", PowerSection.blocks(result));
        Sections.fold(blocks, "fly.section.turns", turns());
        Sections.fold(blocks, "fly.section.roll", rolls());
        Sections.fold(blocks, "fly.section.one-side", OneSideSection.blocks(result));
        Sections.fold(blocks, "fly.section.loop", new PullSection(result.handling()).blocks());
        MoveSection moving = new MoveSection(result);
        Sections.fold(blocks, "fly.section.move", moving.lowering());
        Sections.fold(blocks, "fly.section.back", moving.raising());
        Sections.fold(blocks, "fly.section.balance", BalanceSection.blocks(result));
        Sections.fold(blocks, "fly.section.matters", matters());
        Sections.fold(blocks, "fly.section.servos", ServoSection.loads(glance.servos()));
        Sections.fold(blocks, "fly.section.positions", ServoSection.positions(glance.servos()));
        Sections.fold(
                blocks,
                "fly.section.stand",
                new StandingSection(result.standing())
                        .blocks(result.model().tail().elevator()));
        Sections.fold(
                blocks,
                "row.section.notes",
                Stream.of(
                                result.notes(),
                                List.of(Message.of("note.assumed-bands")),
                                BeyondMeasured.notes(List.of(glance.setUp())))
                        .flatMap(List::stream)
                        .map(note -> Paragraph.of(Text.of(note)))
                        .toList());
        Sections.fold(blocks, "row.section.rows", List.of(Paragraph.say("row.meaning.wider")));
        blocks.addAll(Sections.cautions());
    }

    private List<Paragraph> path(Descents d) {
        List<Paragraph> said = new ArrayList<>();
        if (d.wind() > 0) {
            Value wind = Value.speed(d.wind());
            said.add(d.overGround()
                    .map(angle -> Paragraph.say("fly.path.wind", wind, Value.angle(angle)))
                    .orElseGet(() -> Paragraph.say("fly.path.wind-too-strong", wind)));
        }
        Value limit = Value.speed(d.limitSpeed());
        said.add(d.steepest()
                .map(angle -> Paragraph.say(
                        "fly.path.steepest",
                        limit,
                        Value.angle(angle),
                        d.steepestSpeed().<Text>map(Value::speed).orElse(Text.none())))
                .orElseGet(() -> Paragraph.say("fly.path.none", limit)));
        said.add(said("fly.path.glide", glance.number(FlightQuantity.BEST_GLIDE_RATIO), Value.Kind.RATIO));
        said.add(said("fly.path.dive", glance.number(FlightQuantity.NOSE_DOWN_SPEED), Value.Kind.SPEED));
        d.propellers()
                .forEach(other -> said.add(said(propeller(other.shut()), other.descentAngle(), Value.Kind.ANGLE)));
        return said;
    }

    private static String propeller(Propeller.Shut shut) {
        return switch (shut) {
            case STOPPED -> "fly.path.stopped";
            case TURNING -> "fly.path.turning";
            case FOLDED -> "fly.path.folded";
        };
    }

    /** A sentence with the number in it, or why there is none. */
    private static Paragraph said(String key, Headline headline, Value.Kind kind) {
        return headline instanceof Headline.Known known
                ? Paragraph.say(key, Value.of(known.value(), kind))
                : Paragraph.say(((Headline.Unknown) headline).why());
    }

    /** The number, or why there is none. */
    static Text number(Headline headline, Value.Kind kind) {
        return headline instanceof Headline.Known known
                ? Value.of(known.value(), kind)
                : Text.say(((Headline.Unknown) headline).why());
    }

    private List<Paragraph> turns() {
        return result.turns().stream()
                .map(turn -> Paragraph.say(
                        turnKey(turn), Value.angle(turn.bank()), number(turn.stallSpeed(), Value.Kind.SPEED)))
                .toList();
    }

    private static String turnKey(FlyResult.Turn turn) {
        if (turn.stallSpeed() instanceof Headline.Unknown) {
            return "fly.turn.none";
        }
        return turn.heldByElevator() ? "fly.turn.elevator" : "fly.turn";
    }

    private List<Paragraph> rolls() {
        List<Paragraph> said = new ArrayList<>();
        for (RollDetail roll : result.rolls()) {
            roll.timeToNinety()
                    .ifPresent(time -> said.add(Paragraph.say("fly.roll.ninety", roll.stick(), Value.time(time))));
            roll.yawing().ifPresent(yaw -> said.add(Paragraph.say(nose(yaw), roll.stick())));
            double where = roll.letsGoWhere().orElse(0.0);
            roll.letsGoAt()
                    .ifPresent(speed -> said.add(Paragraph.say(
                            "fly.roll.lets-go",
                            roll.stick(),
                            Value.speed(speed),
                            Text.say(where < 0 ? "fly.roll.left" : "fly.roll.right"),
                            Value.share(Math.abs(where)))));
        }
        return said;
    }

    static String nose(double yawing) {
        if (Math.abs(yawing) < STEADY_NOSE) {
            return "fly.roll.nose-stays";
        }
        return yawing < 0 ? "fly.roll.nose-against" : "fly.roll.nose-with";
    }

    private List<Paragraph> matters() {
        return result.matters().stream().map(FlyDocument::matter).toList();
    }

    private static Paragraph matter(Sensitivity matter) {
        Value.Kind kind =
                switch (matter.number()) {
                    case "stall" -> Value.Kind.SPEED_STEP;
                    case "roll" -> Value.Kind.RATE;
                    default -> Value.Kind.ANGLE;
                };
        double step = matter.what().equals("balance") ? Sensitivity.BALANCE : Sensitivity.EDGE;
        return Paragraph.say(
                "fly.matter." + matter.what(),
                matter.name(),
                Text.say(
                        "fly.moves." + matter.number(), Value.of(matter.effect().value(), kind)),
                Value.measure(step, Dimension.LENGTH));
    }
}
