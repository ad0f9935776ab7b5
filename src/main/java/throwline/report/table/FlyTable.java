package throwline.report.table;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import throwline.flight.ElevatorBreakdown;
import throwline.model.Propeller;
import throwline.model.Tail;
import throwline.report.EdgeThrow;
import throwline.report.Page;
import throwline.report.Sentences;
import throwline.report.document.Figures;
import throwline.study.BeyondMeasured;
import throwline.study.FlyResult;
import throwline.study.FlyResult.Balance;
import throwline.study.FlyResult.Descents;
import throwline.study.FlyResult.RollDetail;
import throwline.study.FlyResult.Sensitivity;
import throwline.study.Handling.Moves;
import throwline.study.Headline;
import throwline.study.ServoAnswer;
import throwline.units.Dimension;
import throwline.units.QuantityPrinter;
import throwline.words.Message;
import throwline.words.Words;

/** One set-up in depth as a person reads it at a terminal. */
public final class FlyTable {

    /** Yawing moment over rolling moment scale below which the nose is said to stay. */
    private static final double STEADY_NOSE = 5e-4;

    private final Page page;
    private final Words words;
    private final Sentences sentences;
    private final Figures figures;
    private final QuantityPrinter printer;

    /**
     * A table for this page.
     *
     * @param page where it is shown
     * @param words the sentences
     */
    public FlyTable(Page page, Words words) {
        this.page = page;
        this.words = words;
        sentences = new Sentences(words, page.units());
        figures = new Figures(page, words);
        printer = new QuantityPrinter(page.units());
    }

    /** The whole answer. */
    public String write(FlyResult result) {
        return SectionMarks.without(marked(result));
    }

    /** The sections below the rows, for those who show them otherwise than as lines of text. */
    public List<TextSection> sections(FlyResult result) {
        return SectionMarks.sections(new FlyTable(SectionMarks.page(page), words).marked(result));
    }

    private String marked(FlyResult result) {
        StringBuilder text = new StringBuilder();
        String title = words.say(
                "fly.title", result.model().name(), result.glance().setUp().name());
        text.append(page.bold(page.shown(title))).append('\n');
        text.append(page.shown(words.say(
                        "row.pack",
                        result.pack().name(),
                        printer.print(result.pack().mass(), Dimension.MASS),
                        printer.print(result.pack().balance(), Dimension.LENGTH))))
                .append("\n\n");
        Footnotes footnotes = new Footnotes();
        text.append(new FlyersRows(result.model(), List.of(result.glance()), page, words, sentences, footnotes)
                .grid()
                .render(page));
        text.append('\n').append(footnotes.render(page.width()));
        result.descents().ifPresent(d -> section(text, "fly.section.path", path(d, result)));
        field(text, result);
        section(text, "fly.section.turns", turns(result));
        section(text, "fly.section.roll", rolls(result));
        handling(text, result);
        result.balance().ifPresent(b -> section(text, "fly.section.balance", balance(b, result)));
        section(text, "fly.section.matters", matters(result));
        section(text, "fly.section.servos", servos(result));
        section(text, "fly.section.positions", positions(result));
        StandingLines standing = new StandingLines(page, words, figures);
        section(
                text,
                "fly.section.stand",
                standing.table(result.standing())
                        + lines(standing.remarks(
                                result.standing(), result.model().tail().elevator())));
        section(
                text,
                "row.section.notes",
                notes(Stream.of(
                                result.notes(),
                                List.of(Message.of("note.assumed-bands")),
                                BeyondMeasured.notes(List.of(result.glance().setUp())))
                        .flatMap(List::stream)
                        .toList()));
        text.append(Wrapped.paragraph("", "", words.say("row.meaning.likely"), page.width()));
        text.append(Wrapped.paragraph("", "", words.say("row.meaning.wider"), page.width()));
        text.append(Wrapped.paragraph("", "", words.say("row.caution"), page.width()));
        text.append(Wrapped.paragraph("", "", words.say("row.estimate"), page.width()));
        return text.toString();
    }

    private void field(StringBuilder text, FlyResult result) {
        LandingLines lines = new LandingLines(result.model(), page, words, figures);
        List<String> remarks = Stream.concat(
                        lines.remarks(result.glance(), edge(result)).stream(),
                        lines.ranking(result.handling().ranking()).stream())
                .toList();
        section(text, "fly.section.landing", lines.legs(result.glance()) + lines(remarks));
        section(text, "fly.section.bumps", lines(lines.bumps(result.glance())));
    }

    private void handling(StringBuilder text, FlyResult result) {
        PullLines pulls = new PullLines(page, words, figures);
        section(text, "fly.section.loop", pulls.tables(result.handling()) + lines(pulls.remarks(result.handling())));
        MoveLines moving = new MoveLines(page, words, figures, result, edge(result));
        section(text, "fly.section.move", lines(moving.why()));
        Optional<Moves> found = result.handling().moves();
        found.ifPresent(moves ->
                section(text, "fly.section.move", moving.lowering(moves) + lines(moving.loweringRemarks(moves))));
        found.filter(moves -> !moves.raising().isEmpty())
                .ifPresent(moves ->
                        section(text, "fly.section.back", moving.raising(moves) + lines(moving.raisingRemarks(moves))));
    }

    private String lines(List<String> sentences) {
        StringBuilder text = new StringBuilder();
        sentences.forEach(sentence -> line(text, sentence));
        return text.toString();
    }

    private static EdgeThrow edge(FlyResult result) {
        Tail tail = result.model().tail();
        return new EdgeThrow(tail.throwChord());
    }

    private String path(Descents d, FlyResult result) {
        StringBuilder text = new StringBuilder();
        if (d.wind() > 0) {
            String wind = figures.speed(d.wind());
            line(
                    text,
                    d.overGround()
                            .map(angle -> words.say("fly.path.wind", wind, figures.degrees(angle)))
                            .orElseGet(() -> words.say("fly.path.wind-too-strong", wind)));
        }
        String limit = figures.speed(d.limitSpeed());
        String steepest = d.steepest().map(figures::degrees).orElse("");
        String speed = d.steepestSpeed().map(figures::speed).orElse("");
        line(
                text,
                steepest.isEmpty()
                        ? words.say("fly.path.none", limit)
                        : words.say("fly.path.steepest", limit, steepest, speed));
        line(text, said("fly.path.glide", result.glance().bestGlideRatio(), this::ratio));
        line(text, said("fly.path.dive", result.glance().noseDownSpeed(), figures::speed));
        d.propellers()
                .forEach(other -> line(text, said(propeller(other.shut()), other.descentAngle(), figures::degrees)));
        return text.toString();
    }

    private static String propeller(Propeller.Shut shut) {
        return switch (shut) {
            case STOPPED -> "fly.path.stopped";
            case TURNING -> "fly.path.turning";
            case FOLDED -> "fly.path.folded";
        };
    }

    private String ratio(double ratio) {
        return String.format(Locale.ROOT, "%.1f", ratio);
    }

    /** A sentence with the number in it, or why there is none. */
    private String said(String key, Headline headline, DoubleFunction<String> figure) {
        return headline instanceof Headline.Known known
                ? words.say(key, figure.apply(known.value()))
                : sentences.why((Headline.Unknown) headline);
    }

    private String headline(Headline headline, DoubleFunction<String> figure) {
        return headline instanceof Headline.Known known
                ? figure.apply(known.value())
                : sentences.why((Headline.Unknown) headline);
    }

    private static String turnKey(FlyResult.Turn turn) {
        if (turn.stallSpeed() instanceof Headline.Unknown) {
            return "fly.turn.none";
        }
        return turn.heldByElevator() ? "fly.turn.elevator" : "fly.turn";
    }

    private String turns(FlyResult result) {
        StringBuilder text = new StringBuilder();
        for (FlyResult.Turn turn : result.turns()) {
            line(
                    text,
                    words.say(
                            turnKey(turn), figures.degrees(turn.bank()), headline(turn.stallSpeed(), figures::speed)));
        }
        return text.toString();
    }

    private String rolls(FlyResult result) {
        StringBuilder text = new StringBuilder();
        for (RollDetail roll : result.rolls()) {
            roll.timeToNinety()
                    .ifPresent(time -> line(text, words.say("fly.roll.ninety", roll.stick(), figures.seconds(time))));
            roll.yawing().ifPresent(yaw -> line(text, words.say(nose(yaw), roll.stick())));
            roll.letsGoAt()
                    .ifPresent(speed -> line(
                            text,
                            words.say(
                                    "fly.roll.lets-go",
                                    roll.stick(),
                                    figures.speed(speed),
                                    words.say(side(roll.letsGoWhere())),
                                    figures.share(Math.abs(roll.letsGoWhere().orElse(0.0))))));
        }
        return text.toString();
    }

    static String nose(double yawing) {
        if (Math.abs(yawing) < STEADY_NOSE) {
            return "fly.roll.nose-stays";
        }
        return yawing < 0 ? "fly.roll.nose-against" : "fly.roll.nose-with";
    }

    private static String side(Optional<Double> where) {
        return where.orElse(0.0) < 0 ? "fly.roll.left" : "fly.roll.right";
    }

    private String matters(FlyResult result) {
        StringBuilder text = new StringBuilder();
        for (Sensitivity matter : result.matters()) {
            String effect =
                    switch (matter.number()) {
                        case "stall" -> figures.speedStep(matter.effect().value());
                        case "roll" -> figures.rate(matter.effect().value());
                        default -> figures.degrees(matter.effect().value());
                    };
            line(
                    text,
                    words.say(
                            "fly.matter." + matter.what(),
                            matter.name(),
                            words.say("fly.moves." + matter.number(), effect),
                            printer.print(
                                    matter.what().equals("balance") ? Sensitivity.BALANCE : Sensitivity.EDGE,
                                    Dimension.LENGTH)));
        }
        return text.toString();
    }

    private String balance(Balance b, FlyResult result) {
        EdgeThrow edge = edge(result);
        StringBuilder text = new StringBuilder();
        b.stabilityMargin()
                .ifPresent(margin -> line(
                        text,
                        words.say(
                                margin >= 0 ? "fly.balance.margin" : "fly.balance.unstable",
                                figures.share(Math.abs(margin)),
                                b.neutralPoint().map(figures::about).orElse(""))));
        line(text, words.say("fly.balance.tail", figures.degrees(b.tailMargin())));
        line(
                text,
                words.say(
                        b.elevatorAtCruise() instanceof Headline.Known ? "fly.balance.cruise" : "fly.balance.no-cruise",
                        figures.speed(b.cruiseSpeed()),
                        headline(b.elevatorAtCruise(), v -> figures.edge(v, edge))));
        b.why().ifPresent(why -> why(text, why, edge));
        return text.toString();
    }

    private void why(StringBuilder text, ElevatorBreakdown why, EdgeThrow edge) {
        double total = why.camber() + why.downwash() + why.dragArm() + why.wake() + why.attitude() + why.rest();
        String whole = figures.edge(total, edge);
        line(text, words.say(isNeutral(whole) ? "fly.why.stays" : "fly.why", whole));
        part(text, "fly.why.camber", why.camber(), edge);
        part(text, "fly.why.downwash", why.downwash(), edge);
        part(text, "fly.why.drag", why.dragArm(), edge);
        part(text, "fly.why.wake", why.wake(), edge);
        part(text, "fly.why.attitude", why.attitude(), edge);
        part(text, "fly.why.rest", why.rest(), edge);
    }

    private void part(StringBuilder text, String key, double angle, EdgeThrow edge) {
        String size = figures.edge(angle, edge);
        String moved = isNeutral(size) ? words.say("fly.why.none") : size;
        text.append(Wrapped.paragraph("    ", "      ", page.shown(words.say(key, moved)), page.width()));
    }

    private boolean isNeutral(String throwText) {
        return throwText.equals(words.say("row.neutral"));
    }

    private String servos(FlyResult result) {
        ServoAnswer servos = result.glance().servos();
        ServoLines lines = new ServoLines(page, words);
        StringBuilder text = new StringBuilder(lines.loads(servos));
        lines.fastest(servos).ifPresent(speed -> line(text, words.say("fly.servo.meaning", speed)));
        List<String> assumed = lines.assumed(servos);
        if (!assumed.isEmpty()) {
            line(text, words.say("fly.servo.assumed", String.join(", ", assumed)));
        }
        return text.toString();
    }

    private String positions(FlyResult result) {
        StringBuilder text = new StringBuilder(
                new ServoLines(page, words).positions(result.glance().servos()));
        if (!text.isEmpty()) {
            line(text, words.say("fly.servo.positions"));
        }
        return text.toString();
    }

    private String notes(List<Message> notes) {
        StringBuilder text = new StringBuilder();
        notes.forEach(note -> line(text, sentences.say(note)));
        return text.toString();
    }

    private void line(StringBuilder text, String sentence) {
        text.append(Wrapped.paragraph("  ", "    ", page.shown(sentence), page.width()));
    }

    private void section(StringBuilder text, String heading, String body) {
        if (!body.isEmpty()) {
            text.append(SectionMarks.around(page.bold(words.say(heading)), body));
        }
    }
}
