package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.flight.Airframe;
import throwline.flight.Flight;
import throwline.flight.PullStallSpeed;
import throwline.flight.PullUp;
import throwline.flight.Stall;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.section.MeasuredSections;
import throwline.study.FlyQuestion.Share;
import throwline.study.FlyQuestion.Throw;
import throwline.study.Handling.Gain;
import throwline.study.Handling.Loop;
import throwline.study.Handling.Mix;
import throwline.study.Handling.Move;
import throwline.study.Handling.Moves;
import throwline.words.Message;

/** Speeds, times and mixes that a person names are those that are flown; what cannot be flown is told. */
class AskedMovesTest {

    private static Airframe airframe;
    private static Model model;
    private static Pack pack;
    private static MoveStudy.Side reference;
    private static MoveStudy.Side airbrake;

    @BeforeAll
    static void ready() {
        model = Examples.read("orchard");
        airframe = new Airframe(model, Examples.AIRFOILS, new MeasuredSections());
        pack = model.packs().get(0);
        reference = side(model.reference());
        airbrake = side(model.setUps().get(3));
    }

    private static MoveStudy.Side side(SetUp setUp) {
        Flight flight = new Flight(airframe, setUp);
        return new MoveStudy.Side(flight, setUp, flight.stall(pack).orElseThrow());
    }

    private static MoveStudy.Found found(FlyQuestion question) {
        return new MoveStudy(airframe, pack, reference, airbrake).moves(question);
    }

    private static FlyQuestion asked(
            Optional<Double> lowerSpeed, Optional<Double> time, Optional<FlyQuestion.Mixed> mixed) {
        return new FlyQuestion(Optional.empty(), List.of(), lowerSpeed, time, mixed);
    }

    @Test
    void speedTimeAndThrowAreThoseAsked() {
        double down = Math.toRadians(2.5);
        Moves moves = found(asked(Optional.of(14.0), Optional.of(1.0), Optional.of(new Throw(down))))
                .moves()
                .orElseThrow();
        assertThat(moves.lowerSpeed()).isEqualTo(14);
        for (List<Move> runs : List.of(moves.lowering(), moves.raising())) {
            assertThat(runs).hasSize(4).allMatch(run -> run.time() == 1);
            assertThat(runs.stream().map(Move::mix).map(Mix::own)).containsExactly(false, false, false, true);
            assertThat(runs.get(3).mix().elevator()).isEqualTo(down);
        }
        assertThat(moves.lowering().get(0).history().get(0).speed()).isEqualTo(14);
        assertThat(moves.raising().get(0).history().get(0).speed())
                .isCloseTo(1.3 * reference.stall().speed(), within(1e-9));
    }

    /** A mix that the model file programs is flown as if it had been asked for. */
    @Test
    void aMixOfTheFileIsTheDefault() {
        SetUp setUp = airbrake.setUp();
        double angle = Math.toRadians(4);
        MoveStudy.Side programmed = side(new SetUp(setUp.name(), setUp.deflections(), angle));
        Moves moves = new MoveStudy(airframe, pack, reference, programmed)
                .moves(FlyQuestion.open())
                .moves()
                .orElseThrow();
        assertThat(moves.raising().get(3).mix().elevator()).isEqualTo(angle);
        assertThat(MoveRule.of(moves).orElseThrow().mix().own()).isTrue();
    }

    /** The cards tell what the answer in depth tells, and going back by that rule stays clear of the stall. */
    @ParameterizedTest
    @ValueSource(strings = {"orchard", "ridgeline", "saltmarsh"})
    void oneRuleForMovingSurfaces(String name) {
        Model any = Examples.read(name);
        Pack with = any.packs().get(0);
        FirstFlights rules = new FirstFlightStudy(new MeasuredSections()).rules(any, Examples.AIRFOILS, with);
        assertThat(rules.moves()).hasSize(any.setUps().size() - 1);
        SetUp last = any.setUps().get(any.setUps().size() - 1);
        Moves moves = new FlyStudy(new MeasuredSections(), Bands.load())
                .fly(any, Examples.AIRFOILS, with, last, FlyQuestion.open())
                .handling()
                .moves()
                .orElseThrow();
        MoveRule rule = MoveRule.of(moves).orElseThrow();
        assertThat(rules.moves()).containsEntry(last.name(), rule);
        Move back = moves.raising().get(1);
        assertThat(rule.closeSpeed()).isEqualTo(back.history().get(0).speed());
        assertThat(back.slowest()).isGreaterThan(moves.referenceStall());
    }

    /** Below the speed told full stick stalls the wing, above it does not. */
    @Test
    void entrySpeedOfAPullIsWhereItStopsStalling() {
        Stick.Pull stick = new Stick.Pull("up", Map.of("flaps", Math.toRadians(8)), Math.toRadians(-25), List.of());
        PullStallSpeed search = new PullStallSpeed(reference.flight(), pack, reference.stall());
        double below = search.of(stick, 25).orElseThrow();
        assertThat(limit(stick, below + 0.1)).isNotEqualTo(PullUp.Limit.WING);
        assertThat(limit(stick, below - 0.1)).isEqualTo(PullUp.Limit.WING);
        assertThat(search.of(new Stick.Pull("up", Map.of(), Math.toRadians(-5), List.of()), 25))
                .isEmpty();
    }

    private static PullUp.Limit limit(Stick.Pull stick, double speed) {
        return reference
                .flight()
                .pull(stick, pack, reference.stall(), speed)
                .orElseThrow()
                .limit();
    }

    /** A quarter of the change lies between none and half of it, in all that the mix changes. */
    @Test
    void aShareIsOneOfTheWholeChange() {
        Moves moves = found(asked(Optional.empty(), Optional.of(4.0), Optional.of(new Share(0.25))))
                .moves()
                .orElseThrow();
        List<Move> runs = moves.lowering();
        assertThat(runs.get(3).mix().elevator()).isCloseTo(runs.get(2).mix().elevator() / 4, within(1e-12));
        assertThat(runs.get(3).mostLoad())
                .isBetween(runs.get(1).mostLoad(), runs.get(0).mostLoad());
        assertThat(runs.get(3).slowest()).isLessThan(runs.get(1).slowest());
    }

    @Test
    void aMixThatIsShownAnywayIsNotShownTwice() {
        assertThat(found(asked(Optional.empty(), Optional.empty(), Optional.of(new Share(0.5))))
                        .moves()
                        .orElseThrow()
                        .lowering())
                .hasSize(3);
    }

    /** Not quicker than usual, and quick enough only where the mix to start with keeps the load. */
    @Test
    void theTimeSuitsTheMixToStartWith() {
        Moves moves = found(FlyQuestion.open()).moves().orElseThrow();
        double half = moves.suggested().get(1).time().orElseThrow();
        assertThat(moves.suggested().get(1).mix().share()).isEqualTo(0.5);
        assertThat(moves.lowering().get(0).time()).isEqualTo(Math.max(1.5, half));
        assertThat(moves.lowering().get(1).mostLoad()).isLessThanOrEqualTo(1.3);
    }

    @ParameterizedTest
    @CsvSource({"8, note.move.too-slow", "60, note.move.too-fast"})
    void speedsThatAreNotFlownAreTold(double speed, String why) {
        MoveStudy.Found found = found(asked(Optional.of(speed), Optional.empty(), Optional.empty()));
        assertThat(found.moves()).isEmpty();
        assertThat(found.why().map(Message::code)).contains(why);
    }

    private static PullStudy pulls(Model of, SetUp setUp) {
        Airframe flown = new Airframe(of, Examples.AIRFOILS, new MeasuredSections());
        Flight flight = new Flight(flown, setUp);
        Stall stall = flight.stall(pack).orElseThrow();
        return new PullStudy(flight, of.packs().get(0), setUp, stall, Bands.load());
    }

    /** Exactly the speeds asked about: below the stall and beyond the steepest dive a sentence stands for the loop. */
    @Test
    void loopsAtTheSpeedsAsked() {
        PullStudy.Pulls found = pulls(model, model.reference()).at(List.of(7.0, 15.0, 25.0, 90.0));
        assertThat(found.loops().stream().map(Loop::speed).distinct()).containsExactly(15.0, 25.0);
        assertThat(found.none().stream().map(Message::code))
                .containsExactly("note.loop.too-slow", "note.loop.too-fast");
    }

    /** The same elevator with and without flaps; where the model has no such stick, one is made. */
    @Test
    void flapsAreComparedWithTheElevatorAlone() {
        PullStudy.Pulls both = pulls(model, model.reference()).at(List.of(20.0));
        assertThat(both.loops()).hasSize(2).noneMatch(Loop::withoutFlaps);
        Gain gain = both.gains().get(0);
        assertThat(List.of(gain.stick(), gain.plain())).containsExactly("with camber", "full up");

        Model alone = withSticks(model.sticks().stream()
                .filter(stick -> !stick.name().equals("full up"))
                .toList());
        PullStudy.Pulls made = pulls(alone, alone.reference()).at(List.of(20.0));
        assertThat(made.loops().stream().map(Loop::withoutFlaps)).containsExactly(false, true);
        Gain same = made.gains().get(0);
        assertThat(List.of(same.stick(), same.plain())).containsExactly("with camber", "with camber");
        assertThat(same.with().value()).isCloseTo(gain.with().value(), within(1e-4));
        assertThat(same.without().value()).isCloseTo(gain.without().value(), within(1e-4));

        Model plain = withSticks(List.of(new Stick.Pull("up", Map.of(), Math.toRadians(-14), List.of())));
        assertThat(pulls(plain, plain.reference()).at(List.of(20.0)).gains()).isEmpty();
    }

    private static Model withSticks(List<Stick> sticks) {
        return new Model(
                model.name(),
                model.packs(),
                model.wing(),
                model.tail(),
                model.body(),
                model.wheels(),
                model.propeller(),
                model.field(),
                model.setUps(),
                sticks);
    }
}
