package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.model.Model;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Role;
import throwline.report.document.Text;
import throwline.report.document.Text.Join;
import throwline.report.document.Value;
import throwline.study.Danger;
import throwline.study.Danger.Use;
import throwline.study.FlightQuantity;
import throwline.study.InShort;
import throwline.study.InShort.Against;
import throwline.study.InShort.LeastWarned;
import throwline.study.InShort.Slowest;
import throwline.study.InShort.StickGain;
import throwline.study.SetUpResult;

/** Summary that a flyer must take away, in eight sentences at most: dangers first, the worst of them before the others. */
final class InShortSection {

    /** The distance flown is given for this loss of height, m. */
    private static final double LOSS = 1;

    private static final int MOST = 8;

    private final Model model;
    private final List<SetUpResult> setUps;
    private final InShort inShort;

    private InShortSection(Model model, List<SetUpResult> setUps) {
        this.model = model;
        this.setUps = setUps;
        inShort = InShort.of(model, setUps);
    }

    /** The sentences about set-ups of a model with one pack, the caution that always holds last. */
    static List<Paragraph> of(Model model, List<SetUpResult> setUps) {
        return new InShortSection(model, setUps).sentences();
    }

    /** The dangers alone. */
    static List<Paragraph> dangers(Model model, List<SetUpResult> setUps) {
        return new InShortSection(model, setUps).dangers(MOST);
    }

    private List<Paragraph> sentences() {
        List<Paragraph> others = new ArrayList<>(alone());
        slowest().ifPresent(others::add);
        steepest().ifPresent(others::add);
        elevator().ifPresent(others::add);
        sticks().or(this::rollLost).ifPresent(others::add);
        List<Text> last = new ArrayList<>();
        if (inShort.dangers().containsKey(Danger.NEVER_MEASURED)) {
            last.add(Text.say("danger." + Danger.NEVER_MEASURED.key()));
        }
        last.add(Text.say("page.verdict.last"));
        List<Paragraph> said = new ArrayList<>(dangers(MOST - 1 - others.size()));
        said.addAll(others);
        if (said.size() + last.size() <= MOST) {
            last.forEach(text -> said.add(Paragraph.of(text)));
        } else {
            said.add(Paragraph.of(Text.join(Join.BLANK, last)));
        }
        return said;
    }

    /** So many of the worst that may hurt; all stand in the notes. */
    private List<Paragraph> dangers(int most) {
        return DangerSentences.of(inShort, setUps.size()).stream().limit(most).toList();
    }

    /** Where there is nothing to compare with: the set-up by itself. */
    private List<Paragraph> alone() {
        SetUpResult only = setUps.get(0);
        boolean told = setUps.size() == 1
                && only.approachSpeed().known().isPresent()
                && only.descentAngle()
                        .known()
                        .filter(angle -> angle.value() > 0)
                        .isPresent();
        if (!told) {
            return List.of();
        }
        double speed = only.approachSpeed().known().orElseThrow().value();
        double angle = only.descentAngle().known().orElseThrow().value();
        // Where a danger holds for the landing, the speed is told and not recommended.
        boolean warned = Danger.of(only, model.field()).stream().anyMatch(danger -> danger.rulesOut(Use.LANDING));
        String key = warned ? "page.verdict.alone.warned" : "page.verdict.alone";
        Text said = Text.say(key, Value.speed(speed), ahead(angle), step());
        return List.of(Paragraph.of(withRoundOut(new Text.Capital(said), only)));
    }

    private Optional<Paragraph> slowest() {
        return setUps.size() == 1
                ? Optional.empty()
                : inShort.slowest()
                        .map(this::slowest)
                        .or(() -> inShort.leastWarned().map(InShortSection::leastWarned));
    }

    private static Paragraph leastWarned(LeastWarned least) {
        return new Paragraph(
                Role.PLAIN,
                Text.say("page.verdict.warned.about"),
                Text.say("page.verdict.warned", least.setUp(), Value.speed(least.speed())));
    }

    private Paragraph slowest(Slowest slowest) {
        if (slowest.all()) {
            double least = setUps.stream()
                    .flatMap(s -> s.approachSpeed().known().stream())
                    .mapToDouble(known -> known.value())
                    .min()
                    .orElseThrow();
            return new Paragraph(
                    Role.PLAIN,
                    Text.say("page.verdict.slow.about"),
                    Text.say("page.verdict.slow.close", Value.speed(least), Value.speed(slowest.speed())));
        }
        boolean one = slowest.setUps().size() == 1;
        String key = slowest.passedOver()
                ? one ? "page.verdict.slow.safe" : "page.verdict.slow.safe-some"
                : one ? "page.verdict.slow.one" : "page.verdict.slow.some";
        return about(Text.names(slowest.setUps()), Text.say(key, Value.speed(slowest.speed())));
    }

    /** The steepest way down that may be recommended, or that none is clearly steeper. */
    private Optional<Paragraph> steepest() {
        if (inShort.steeper().isEmpty()) {
            List<String> close =
                    inShort.noSteeper().stream().map(Against::setUp).toList();
            return close.isEmpty()
                    ? Optional.empty()
                    : Optional.of(about(
                            Text.names(close),
                            Text.say(
                                    "page.verdict.steep.close",
                                    model.reference().name())));
        }
        Against steep = inShort.steeper().get(0);
        Text every = ahead(steep.own().value());
        Text instead = ahead(steep.reference().value());
        Optional<String> slower = inShort.slowest()
                .map(s -> s.setUps().get(0))
                .filter(name -> !inShort.slowest().orElseThrow().setUps().contains(steep.setUp()));
        Text said = slower.map(name -> Text.say("page.verdict.steep.not-slower", name, every, instead, step()))
                .orElseGet(() -> Text.say("page.verdict.steep", every, instead, step()));
        SetUpResult result = setUps.stream()
                .filter(s -> s.setUp().name().equals(steep.setUp()))
                .findFirst()
                .orElseThrow();
        return Optional.of(about(Text.name(steep.setUp()), withRoundOut(said, result)));
    }

    private static Text withRoundOut(Text said, SetUpResult setUp) {
        return setUp.number(FlightQuantity.FLARE_HEIGHT)
                .known()
                .map(height -> Text.join(
                        Join.BLANK,
                        List.of(said, Text.say("page.verdict.round-out", Value.of(height.value(), Value.Kind.HEIGHT)))))
                .orElse(said);
    }

    private static Text step() {
        return Value.of(LOSS, Value.Kind.GLIDE);
    }

    private static Text ahead(double angle) {
        return Value.of(LOSS / Math.tan(angle), Value.Kind.GLIDE);
    }

    /** The elevator to program; where all may go either way, that. */
    private Optional<Paragraph> elevator() {
        double chord = model.tail().throwChord();
        List<Text> mixes = inShort.elevators().stream()
                .flatMap(each ->
                        each.change().startingMix().stream().map(mix -> mix(new Value.Edge(mix, chord), each.setUp())))
                .toList();
        if (!mixes.isEmpty()) {
            return Optional.of(new Paragraph(
                    Role.PLAIN,
                    Text.say("page.verdict.mix.about"),
                    Text.say("page.verdict.mix", Text.join(Join.AND, mixes))));
        }
        List<String> open = inShort.elevators().stream()
                .filter(each -> each.change().mayGoEitherWay())
                .map(InShort.Elevator::setUp)
                .toList();
        return open.isEmpty()
                ? Optional.empty()
                : Optional.of(new Paragraph(
                        Role.PLAIN,
                        setUps.size() == 1
                                ? Text.say("page.verdict.mix.about")
                                : Text.say("page.verdict.mix.close.about", Text.names(open)),
                        Text.say("page.verdict.mix.close")));
    }

    private Text mix(Text edge, String setUp) {
        return setUps.size() == 1 ? edge : Text.say("page.verdict.mix.one", edge, setUp);
    }

    /** What the first other roll stick brings over the first one. */
    private Optional<Paragraph> sticks() {
        return inShort.sticks().stream().findFirst().map(this::stick);
    }

    private Paragraph stick(StickGain gain) {
        boolean close = gain.rate().tooCloseTo(gain.firstRate());
        Text rate = Value.of(gain.rate().value(), Value.Kind.RATE);
        Text first = Value.of(gain.firstRate().value(), Value.Kind.RATE);
        return about(
                Text.name(gain.stick()),
                close
                        ? Text.say("page.verdict.stick.close", gain.first())
                        : Text.say("page.verdict.stick", rate, first, gain.first()));
    }

    private Optional<Paragraph> rollLost() {
        return inShort.rollLost().stream()
                .findFirst()
                .map(lost -> about(
                        Text.name(lost.setUp()),
                        Text.say(
                                "page.verdict.roll",
                                Value.of(lost.own().value(), Value.Kind.RATE),
                                Value.of(lost.reference().value(), Value.Kind.RATE))));
    }

    private static Paragraph about(Text names, Text said) {
        return DangerSentences.about(Role.PLAIN, names, said);
    }
}
