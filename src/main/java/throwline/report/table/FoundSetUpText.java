package throwline.report.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.model.Model;
import throwline.report.BenchThrow;
import throwline.report.Headlines;
import throwline.report.Sentences;
import throwline.report.document.Figures;
import throwline.sizing.CandidateFlight;
import throwline.sizing.FoundSetUp;
import throwline.sizing.FoundSetUp.OneDegree;
import throwline.sizing.SetUpWants;
import throwline.sizing.SetUpWants.WantedDescent;
import throwline.sizing.SurfaceGroups;
import throwline.study.FindResult;
import throwline.study.FindResult.SetUpFound;
import throwline.study.FindResult.ThrowBand;
import throwline.study.Headline;
import throwline.words.Words;

/** Where flaps and ailerons must stand, in words. */
final class FoundSetUpText {

    /** A change of speed that two decimals do not show, m/s. */
    private static final double UNSEEN = 0.005;

    /** Nearer to the stall than this nothing is left for bumps and turns (PRACTICE, methods manual 17.7). */
    private static final double LEAST_MARGIN = 1.2;

    private final Model model;
    private final SetUpWants wants;
    private final SetUpFound answer;
    private final FoundSetUp found;
    private final FindWords say;
    private final Figures figures;
    private final Words words;
    private final Sentences sentences;

    FoundSetUpText(FindResult result, SetUpFound answer, FindWords say, Words words, Sentences sentences) {
        model = result.model();
        wants = result.question().setUp().orElseThrow();
        this.answer = answer;
        found = answer.found();
        this.say = say;
        figures = say.figures();
        this.words = words;
        this.sentences = sentences;
    }

    String write() {
        StringBuilder text = new StringBuilder();
        say.outcome(text, wanted(), found.met(), found.trial().fault().isEmpty());
        if (!found.met()) {
            say.line(text, words.say("find.stopped", say.limits(found.why())));
        }
        text.append('\n').append(say.bench(bench(), model)).append('\n');
        descent(text);
        say.line(text, words.say("find.setup.stall", number(answer.stallSpeed(), true)));
        wants.descent().filter(d -> found.trial().stall().isPresent()).ifPresent(d -> margin(text, d.speed()));
        elevator(text);
        found.oneDegree().forEach(one -> say.line(text, oneDegree(one)));
        answer.throwBand().ifPresent(band -> say.line(text, sure(band)));
        if (!Double.isNaN(reached(found.most()))) {
            say.line(text, reach());
        }
        text.append('\n');
        return text.toString();
    }

    private String wanted() {
        Optional<WantedDescent> descent = wants.descent();
        String stall = wants.stallSpeed().map(figures::speed).orElse("");
        if (descent.isEmpty()) {
            return words.say("find.wanted.stall", stall);
        }
        String angle = figures.tenths(descent.get().angle());
        String speed = figures.speed(descent.get().speed());
        return wants.stallSpeed().isPresent()
                ? words.say("find.wanted.both", angle, speed, stall)
                : words.say("find.wanted.descent", angle, speed);
    }

    private List<BenchThrow> bench() {
        return FindWords.movable(model).stream()
                .map(s -> BenchThrow.of(model, s, found.trial().setUp().deflection(s.name())))
                .toList();
    }

    private void descent(StringBuilder text) {
        answer.descentAngle()
                .ifPresent(angle -> say.line(
                        text,
                        angle instanceof Headline.Unknown unknown
                                ? sentences.why(unknown)
                                : words.say(
                                        "find.setup.descent",
                                        number(angle, false),
                                        figures.speed(
                                                wants.descent().orElseThrow().speed()))));
    }

    private void margin(StringBuilder text, double speed) {
        double ratio = speed / found.trial().stallSpeed();
        String key = ratio < 1
                ? "find.setup.margin"
                : ratio < LEAST_MARGIN ? "find.setup.margin-small" : "find.setup.margin";
        say.line(text, words.say(key, figures.speed(speed), FindWords.ratio(ratio)));
    }

    private String number(Headline headline, boolean speed) {
        if (headline instanceof Headline.Known known) {
            return words.say(
                    "find.likely",
                    speed ? figures.speed(known.value()) : figures.tenths(known.value()),
                    speed ? figures.speedBand(known) : figures.degreesBand(known));
        }
        return sentences.why((Headline.Unknown) headline);
    }

    private void elevator(StringBuilder text) {
        Optional<Headline.Known> change = answer.elevatorChange().flatMap(Headlines::known);
        change.ifPresent(known -> {
            String start = Headlines.eitherWay(known)
                    ? words.say("row.none")
                    : figures.edge(known.value() / 2, FindWords.elevatorEdge(model));
            String edge = figures.edge(known.value(), FindWords.elevatorEdge(model));
            say.line(
                    text,
                    words.say(
                            edge.equals(words.say("row.neutral")) ? "find.setup.elevator-stays" : "find.setup.elevator",
                            model.reference().name(),
                            figures.speed(wants.descent().orElseThrow().speed()),
                            edge,
                            figures.deflection(known.value()),
                            start));
        });
    }

    private String oneDegree(OneDegree one) {
        List<String> parts = new ArrayList<>();
        one.angle().ifPresent(a -> parts.add(words.say(a >= 0 ? "find.steeper" : "find.flatter", say.angleStep(a))));
        String step = figures.speedStep(one.stallSpeed());
        String change = one.stallSpeed() >= 0 ? "find.stalls-faster" : "find.stalls-slower";
        parts.add(words.say(Math.abs(one.stallSpeed()) < UNSEEN ? "find.stalls-same" : change, step));
        return words.say(
                one.flaps()
                        ? (one.step() > 0 ? "find.degree.flaps-down" : "find.degree.flaps-up")
                        : (one.step() > 0 ? "find.degree.ailerons-down" : "find.degree.ailerons-up"),
                String.join(", ", parts));
    }

    private String sure(ThrowBand band) {
        SurfaceGroups groups = SurfaceGroups.of(model);
        String which = (found.lineIsFlaps() ? groups.flaps() : groups.ailerons())
                .get(0)
                .name();
        String key = band.lowOpen() && band.highOpen()
                ? "find.sure.nothing"
                : band.lowOpen() || band.highOpen() ? "find.sure.open" : "find.sure";
        return words.say(key, which, figures.deflection(band.low()), figures.deflection(band.high()));
    }

    private double reached(CandidateFlight trial) {
        return wants.descent().isPresent() ? trial.angle() : trial.stallSpeed();
    }

    private String reach() {
        CandidateFlight least = found.least();
        CandidateFlight most = found.most();
        String with = say.surfaces(model, most);
        String stopped = say.limits(found.stoppedBy());
        return wants.descent()
                .map(d -> words.say(
                        "find.reach.descent",
                        figures.speed(d.speed()),
                        figures.tenths(least.angle()),
                        figures.tenths(most.angle()),
                        with,
                        stopped))
                .orElseGet(() -> words.say(
                        "find.reach.stall",
                        figures.speed(least.stallSpeed()),
                        figures.speed(most.stallSpeed()),
                        with,
                        stopped));
    }
}
