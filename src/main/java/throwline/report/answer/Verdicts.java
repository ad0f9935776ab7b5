package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import throwline.model.Stick;
import throwline.report.Headlines;
import throwline.report.answer.Situation.Has;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Role;
import throwline.report.document.Text;
import throwline.report.document.Text.Join;
import throwline.report.document.Value;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.HeadlineNumbers.RollRate;
import throwline.study.SetUpResult;

/** What a flyer must take away, chosen by conditions: a table of rules, each of which says something or nothing. */
final class Verdicts {

    /** The distance flown is given for this loss of height, m. */
    private static final double LOSS = 10;

    private static final List<Function<Situation, List<Paragraph>>> RULES = List.of(
            Verdicts::balance,
            Verdicts::noAnswer,
            Verdicts::alone,
            Verdicts::slowest,
            Verdicts::steepness,
            Verdicts::noSteeper,
            Verdicts::elevatorToMix,
            Verdicts::elevatorEitherWay,
            s -> about("page.verdict.elevator-first", s.noted("note.elevator-before-wing")),
            s -> about("page.verdict.tail", s.noted("note.tail-near-stall")),
            Verdicts::wingDrop,
            Verdicts::roll,
            Verdicts::notMeasured,
            s -> List.of(Paragraph.say("page.verdict.last")));

    private Verdicts() {}

    /** All sentences, the one that holds always last. */
    static List<Paragraph> of(Situation situation) {
        return RULES.stream().flatMap(rule -> rule.apply(situation).stream()).toList();
    }

    /** Before all else: what must not be flown as it is. */
    private static List<Paragraph> balance(Situation s) {
        return Stream.of("unstable", "hardly-stable", "servo.overpowered")
                .flatMap(how -> about("page.verdict." + how, s.noted("note." + how)).stream())
                .map(said -> new Paragraph(Role.DANGER, said.lead(), said.text()))
                .toList();
    }

    private static List<Paragraph> noAnswer(Situation s) {
        return about(
                "page.verdict.no-answer",
                s.setUps().stream()
                        .filter(setUp -> Headlines.known(setUp.approachSpeed()).isEmpty()
                                || Headlines.known(setUp.descentAngle()).isEmpty())
                        .map(setUp -> setUp.setUp().name())
                        .toList());
    }

    /** Where there is nothing to compare with: the set-up by itself. */
    private static List<Paragraph> alone(Situation s) {
        SetUpResult only = s.setUps().get(0);
        Optional<Has> speed = s.has(only, SetUpResult::approachSpeed);
        Optional<Has> path = s.has(only, SetUpResult::descentAngle).filter(has -> has.value() > 0);
        if (s.setUps().size() > 1 || speed.isEmpty() || path.isEmpty()) {
            return List.of();
        }
        Text said = Text.say("page.verdict.alone", Value.speed(speed.get().value()), ahead(path.get()));
        return List.of(about(Text.name(only.setUp().name()), withRoundOut(said, only)));
    }

    /** Slowest is who comes in slowest and can be told apart from at least one other. */
    private static List<Paragraph> slowest(Situation s) {
        List<Has> all = s.with(s.setUps(), SetUpResult::approachSpeed);
        Optional<Has> slowest = s.slowest();
        if (slowest.isEmpty() || all.size() < 2) {
            return List.of();
        }
        Has first = slowest.get();
        if (all.stream().noneMatch(has -> has.apartFrom(first))) {
            return List.of(new Paragraph(
                    Role.PLAIN,
                    Text.say("page.verdict.slow.about"),
                    Text.say("page.verdict.slow.close", Value.speed(first.value()), Value.speed(fastest(all)))));
        }
        List<Has> close = all.stream().filter(has -> !has.apartFrom(first)).toList();
        // Who lands slowest of them is not known, so the speed is one that serves each.
        String key = close.size() == 1 ? "page.verdict.slow.one" : "page.verdict.slow.some";
        return about(key, close.stream().map(Has::name).toList(), Value.speed(fastest(close)));
    }

    private static double fastest(List<Has> all) {
        return all.stream().mapToDouble(Has::value).max().orElseThrow();
    }

    /** A set-up that comes down steeper than the reference, beyond what cannot be told apart. */
    private static List<Paragraph> steepness(Situation s) {
        Optional<Has> reference = referencePath(s).filter(other -> other.value() > 0);
        return s.with(s.moved(), SetUpResult::descentAngle).stream()
                .filter(steep -> reference.filter(steep::moreThan).isPresent())
                .map(steep -> steeper(s, steep, reference.orElseThrow()))
                .toList();
    }

    private static Optional<Has> referencePath(Situation s) {
        return s.reference().flatMap(r -> s.has(r, SetUpResult::descentAngle));
    }

    private static Paragraph steeper(Situation s, Has steep, Has reference) {
        Optional<Has> slowestOther = s.slowest().filter(slow -> !slow.name().equals(steep.name()));
        boolean steepest =
                s.with(s.setUps(), SetUpResult::descentAngle).stream().allMatch(has -> has.value() <= steep.value());
        boolean notSlower =
                steepest && s.has(steep.setUp(), SetUpResult::approachSpeed).isPresent() && slowestOther.isPresent();
        Text said = notSlower
                ? Text.say("page.verdict.steep.not-slower", slowestOther.get().name(), ahead(steep), ahead(reference))
                : Text.say("page.verdict.steep", ahead(steep), ahead(reference));
        return about(Text.name(steep.name()), withRoundOut(said, steep.setUp()));
    }

    private static Text withRoundOut(Text said, SetUpResult setUp) {
        return Headlines.known(setUp.number(FlightQuantity.FLARE_HEIGHT))
                .map(height -> Text.join(
                        Join.BLANK,
                        List.of(said, Text.say("page.verdict.round-out", Value.of(height.value(), Value.Kind.HEIGHT)))))
                .orElse(said);
    }

    private static Text ahead(Has angle) {
        return Value.distance(LOSS / Math.tan(angle.value()));
    }

    private static List<Paragraph> noSteeper(Situation s) {
        Optional<Has> reference = referencePath(s);
        List<String> close = s.with(s.moved(), SetUpResult::descentAngle).stream()
                .filter(has -> reference.isPresent() && !has.apartFrom(reference.get()))
                .map(Has::name)
                .toList();
        return close.isEmpty()
                ? List.of()
                : about(
                        "page.verdict.steep.close",
                        close,
                        reference.orElseThrow().name());
    }

    private static List<Paragraph> elevatorToMix(Situation s) {
        double chord = s.model().tail().throwChord();
        List<Text> mixes = s.with(s.moved(), SetUpResult::elevatorChange).stream()
                .flatMap(has -> has.number().startingMix().stream()
                        .map(mix -> Text.say("page.verdict.mix.one", new Value.Edge(mix, chord), has.name())))
                .toList();
        return mixes.isEmpty()
                ? List.of()
                : List.of(new Paragraph(
                        Role.PLAIN,
                        Text.say("page.verdict.mix.about"),
                        Text.say("page.verdict.mix", Text.join(Join.AND, mixes))));
    }

    private static List<Paragraph> elevatorEitherWay(Situation s) {
        List<String> open = s.with(s.moved(), SetUpResult::elevatorChange).stream()
                .filter(has -> has.number().mayGoEitherWay())
                .map(Has::name)
                .toList();
        return open.isEmpty()
                ? List.of()
                : List.of(new Paragraph(
                        Role.PLAIN,
                        Text.say("page.verdict.mix.close.about", Text.names(open)),
                        Text.say("page.verdict.mix.close")));
    }

    private static List<Paragraph> wingDrop(Situation s) {
        return about(
                "page.verdict.drops",
                s.setUps().stream()
                        .filter(setUp -> Headlines.known(setUp.stallSpeed()).isPresent()
                                && setUp.firstStall().manner() == SetUpResult.Manner.MAY_DROP_A_WING)
                        .map(setUp -> setUp.setUp().name())
                        .toList());
    }

    /** The first roll stick, where a set-up leaves clearly less of it than the reference has. */
    private static List<Paragraph> roll(Situation s) {
        List<Paragraph> said = new ArrayList<>();
        Optional<Stick> stick =
                s.model().sticks().stream().filter(Stick.Roll.class::isInstance).findFirst();
        Optional<Has> reference = stick.flatMap(st -> s.reference().flatMap(r -> s.has(r, rate(st))));
        for (SetUpResult moved : s.moved()) {
            Optional<Has> own = stick.flatMap(st -> s.has(moved, rate(st)));
            if (own.isPresent() && reference.isPresent() && reference.get().moreThan(own.get())) {
                said.addAll(about(
                        "page.verdict.roll",
                        List.of(own.get().name()),
                        stick.orElseThrow().name(),
                        Value.of(own.get().value(), Value.Kind.RATE),
                        Value.of(reference.get().value(), Value.Kind.RATE)));
            }
        }
        return said;
    }

    private static Function<SetUpResult, Headline> rate(Stick stick) {
        return setUp -> setUp.rollRates().stream()
                .filter(roll -> roll.stick().equals(stick.name()))
                .findFirst()
                .map(RollRate::rate)
                .orElse(new Headline.Unknown("why.no-roll"));
    }

    /** Said where the study warned of it. */
    private static List<Paragraph> notMeasured(Situation s) {
        boolean warned = s.warnings().stream().anyMatch(note -> note.code().equals("note.no-flap-measured"));
        return warned ? List.of(Paragraph.say("page.verdict.not-measured")) : List.of();
    }

    private static List<Paragraph> about(String key, List<String> setUps, Object... arguments) {
        return setUps.isEmpty() ? List.of() : List.of(about(Text.names(setUps), Text.say(key, arguments)));
    }

    /** A sentence that begins with the names of set-ups. */
    private static Paragraph about(Text names, Text said) {
        return new Paragraph(Role.PLAIN, Text.say("page.verdict.about", new Text.Capital(names)), said);
    }
}
