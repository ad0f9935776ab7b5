package throwline.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import throwline.model.Stick;
import throwline.report.EdgeThrow;
import throwline.report.Headlines;
import throwline.report.Page;
import throwline.report.document.Figures;
import throwline.report.html.Situation.Has;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.HeadlineNumbers.RollRate;
import throwline.study.SetUpResult;
import throwline.words.Words;

/** What a flyer must take away, chosen by conditions: a table of rules, each of which says something or nothing. */
final class Verdicts {

    /** The distance flown is given for this loss of height, m. */
    private static final double LOSS = 10;

    private final Words words;
    private final Figures figures;
    private final CloseCalls names;
    private final List<Function<Situation, List<String>>> rules = List.of(
            this::balance,
            this::noAnswer,
            this::alone,
            this::slowest,
            this::steepness,
            this::noSteeper,
            this::elevatorToMix,
            this::elevatorEitherWay,
            this::elevatorBeforeWing,
            this::tail,
            this::wingDrop,
            this::roll,
            this::notMeasured,
            situation -> List.of(sentence("page.verdict.last")));

    Verdicts(Page page, Words words) {
        this.words = words;
        figures = new Figures(page, words);
        names = new CloseCalls(words);
    }

    /** All sentences, the one that holds always last. */
    List<String> of(Situation situation) {
        List<String> said = new ArrayList<>();
        rules.forEach(rule -> said.addAll(rule.apply(situation)));
        return said;
    }

    /** Before all else: what must not be flown as it is. */
    private List<String> balance(Situation s) {
        return Stream.of("unstable", "hardly-stable", "servo.overpowered")
                .flatMap(how -> about("page.verdict." + how, s.noted("note." + how)).stream())
                .toList();
    }

    private List<String> noAnswer(Situation s) {
        List<String> none = s.setUps().stream()
                .filter(setUp -> Headlines.known(setUp.approachSpeed()).isEmpty()
                        || Headlines.known(setUp.descentAngle()).isEmpty())
                .map(setUp -> setUp.setUp().name())
                .toList();
        return about("page.verdict.no-answer", none);
    }

    /** Where there is nothing to compare with: the set-up by itself. */
    private List<String> alone(Situation s) {
        if (s.setUps().size() > 1) {
            return List.of();
        }
        SetUpResult only = s.setUps().get(0);
        Optional<Has> speed = s.has(only, SetUpResult::approachSpeed);
        Optional<Has> path = s.has(only, SetUpResult::descentAngle)
                .filter(has -> has.number().value() > 0);
        if (speed.isEmpty() || path.isEmpty()) {
            return List.of();
        }
        String come = figures.speed(speed.get().number().value());
        return List.of(sentence("page.verdict.alone", only.setUp().name(), come, ahead(path.get())) + roundOut(only));
    }

    /** Slowest is who comes in slowest and can be told apart from at least one other. */
    private List<String> slowest(Situation s) {
        List<Has> all = s.with(s.setUps(), SetUpResult::approachSpeed);
        Optional<Has> slowest = s.slowest();
        if (slowest.isEmpty() || all.size() < 2) {
            return List.of();
        }
        Has first = slowest.get();
        if (all.stream().noneMatch(has -> has.apartFrom(first))) {
            double low = first.number().value();
            double high =
                    all.stream().mapToDouble(has -> has.number().value()).max().orElse(low);
            return List.of(sentence("page.verdict.slow.close", figures.speed(low), figures.speed(high)));
        }
        List<Has> close = all.stream().filter(has -> !has.apartFrom(first)).toList();
        // Who lands slowest of them is not known, so the speed is one that serves each.
        double fastest =
                close.stream().mapToDouble(has -> has.number().value()).max().orElseThrow();
        String key = close.size() == 1 ? "page.verdict.slow.one" : "page.verdict.slow.some";
        return List.of(sentence(key, names.and(close.stream().map(Has::name).toList()), figures.speed(fastest)));
    }

    /** A set-up that comes down steeper than the reference, beyond what cannot be told apart. */
    private List<String> steepness(Situation s) {
        List<String> said = new ArrayList<>();
        Optional<Has> reference = s.reference().flatMap(r -> s.has(r, SetUpResult::descentAngle));
        for (Has steep : s.with(s.moved(), SetUpResult::descentAngle)) {
            reference
                    .filter(other -> steep.moreThan(other) && other.number().value() > 0)
                    .ifPresent(other -> said.add(steeper(s, steep, other)));
        }
        return said;
    }

    private String steeper(Situation s, Has steep, Has reference) {
        String every = ahead(steep);
        String instead = ahead(reference);
        Optional<Has> own = s.has(steep.setUp(), SetUpResult::approachSpeed);
        Optional<Has> slowestOther = s.slowest().filter(slow -> !slow.name().equals(steep.name()));
        boolean steepest = s.with(s.setUps(), SetUpResult::descentAngle).stream()
                .allMatch(has -> has.number().value() <= steep.number().value());
        String said = steepest && own.isPresent() && slowestOther.isPresent()
                ? sentence(
                        "page.verdict.steep.not-slower",
                        steep.name(),
                        slowestOther.get().name(),
                        every,
                        instead)
                : sentence("page.verdict.steep", steep.name(), every, instead);
        return said + roundOut(steep.setUp());
    }

    private String roundOut(SetUpResult setUp) {
        return Headlines.known(setUp.number(FlightQuantity.FLARE_HEIGHT))
                .map(height -> " " + words.say("page.verdict.round-out", figures.height(height.value())))
                .orElse("");
    }

    private String ahead(Has angle) {
        return figures.metres(LOSS / Math.tan(angle.number().value()));
    }

    private List<String> noSteeper(Situation s) {
        Optional<Has> reference = s.reference().flatMap(r -> s.has(r, SetUpResult::descentAngle));
        List<String> close = s.with(s.moved(), SetUpResult::descentAngle).stream()
                .filter(has -> reference.isPresent() && !has.apartFrom(reference.get()))
                .map(Has::name)
                .toList();
        return close.isEmpty()
                ? List.of()
                : List.of(sentence(
                        "page.verdict.steep.close",
                        names.and(close),
                        reference.orElseThrow().name()));
    }

    private List<String> elevatorToMix(Situation s) {
        EdgeThrow edge = new EdgeThrow(s.model().tail().throwChord());
        List<String> mixes = s.with(s.moved(), SetUpResult::elevatorChange).stream()
                .filter(has -> !Headlines.eitherWay(has.number()))
                .map(has -> words.say(
                        "page.verdict.mix.one", figures.edge(has.number().value() / 2, edge), has.name()))
                .toList();
        return about("page.verdict.mix", mixes);
    }

    private List<String> elevatorEitherWay(Situation s) {
        return about(
                "page.verdict.mix.close",
                s.with(s.moved(), SetUpResult::elevatorChange).stream()
                        .filter(has -> Headlines.eitherWay(has.number()))
                        .map(Has::name)
                        .toList());
    }

    private List<String> elevatorBeforeWing(Situation s) {
        return about("page.verdict.elevator-first", s.noted("note.elevator-before-wing"));
    }

    private List<String> tail(Situation s) {
        return about("page.verdict.tail", s.noted("note.tail-near-stall"));
    }

    private List<String> wingDrop(Situation s) {
        return about(
                "page.verdict.drops",
                s.setUps().stream()
                        .filter(setUp -> Headlines.known(setUp.stallSpeed()).isPresent()
                                && setUp.firstStall().manner() == SetUpResult.Manner.MAY_DROP_A_WING)
                        .map(setUp -> setUp.setUp().name())
                        .toList());
    }

    /** The first roll stick, where a set-up leaves clearly less of it than the reference has. */
    private List<String> roll(Situation s) {
        List<String> said = new ArrayList<>();
        Optional<Stick> stick =
                s.model().sticks().stream().filter(Stick.Roll.class::isInstance).findFirst();
        Optional<Has> reference = stick.flatMap(st -> s.reference().flatMap(r -> s.has(r, rate(st))));
        for (SetUpResult moved : s.moved()) {
            Optional<Has> own = stick.flatMap(st -> s.has(moved, rate(st)));
            if (own.isPresent() && reference.isPresent() && reference.get().moreThan(own.get())) {
                said.add(sentence(
                        "page.verdict.roll",
                        own.get().name(),
                        stick.orElseThrow().name(),
                        figures.rate(own.get().number().value()),
                        figures.rate(reference.get().number().value())));
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
    private List<String> notMeasured(Situation s) {
        boolean warned =
                s.comparison().warnings().stream().anyMatch(note -> note.code().equals("note.no-flap-measured"));
        return warned ? List.of(sentence("page.verdict.not-measured")) : List.of();
    }

    private List<String> about(String key, List<String> setUps) {
        return setUps.isEmpty() ? List.of() : List.of(sentence(key, names.and(setUps)));
    }

    /** A sentence that begins with a capital letter whatever name it begins with. */
    private String sentence(String key, Object... arguments) {
        String text = words.say(key, arguments);
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
