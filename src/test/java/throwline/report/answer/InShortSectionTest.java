package throwline.report.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static throwline.study.FlightQuantity.APPROACH_SPEED;
import static throwline.study.FlightQuantity.DESCENT_ANGLE;
import static throwline.study.FlightQuantity.ELEVATOR_CHANGE;
import static throwline.study.FlightQuantity.LANDING_DISTANCE;
import static throwline.study.FlightQuantity.LANDING_DISTANCE_IN_WIND;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import throwline.report.CompareAnswer;
import throwline.report.Fixture;
import throwline.report.Page;
import throwline.report.document.Figures;
import throwline.study.Comparison.PackResult;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.Headline.Basis;
import throwline.study.SetUpResult;
import throwline.study.SetUpResult.FirstStall;
import throwline.study.SetUpResult.Manner;
import throwline.study.SetUpResult.Side;
import throwline.units.Display;
import throwline.words.Message;
import throwline.words.Words;

/** Which sentence is said when; every number here is invented. */
class InShortSectionTest {

    private static final String LAST = "An estimate, not proof. Try it high up, with an experienced pilot beside you.";

    private final CompareAnswer answer = Fixture.orchard();

    private List<String> said(UnaryOperator<SetUpResult> change) {
        PackResult pack = answer.comparison().packs().get(0);
        return shown(pack.setUps().stream().map(change).toList());
    }

    private List<String> alone(SetUpResult result) {
        return shown(List.of(result));
    }

    private List<String> shown(List<SetUpResult> changed) {
        Figures figures = new Figures(Page.of(80, true, false, Display.metric()), Words.load());
        return InShortSection.of(answer.comparison().model(), changed).stream()
                .map(said -> (figures.show(said.lead()) + " " + figures.show(said.text()))
                        .replace('\u00a0', ' ')
                        .strip())
                .toList();
    }

    private static Headline sure(double value) {
        return new Headline.Known(value, value, value, Basis.MEASURED);
    }

    private static Headline unsure(double value) {
        return new Headline.Known(value, value - 100, value + 100, Basis.ASSUMED);
    }

    private static boolean is(SetUpResult result, String name) {
        return result.setUp().name().equals(name);
    }

    @Test
    void an_airbrake_that_does_not_land_slower_is_for_coming_down() {
        List<String> said = said(result -> with(
                result,
                sure(is(result, "airbrake") ? 11 : is(result, "landing flap") ? 10 : 12),
                sure(Math.atan(is(result, "airbrake") ? 10.0 / 27 : 10.0 / 71)),
                sure(0)));
        assertThat(said)
                .contains("Landing flap: lands slowest. Approach at 10.0 m/s.")
                .anyMatch(s -> s.startsWith("Airbrake: does not land slower than landing flap; it is for coming down: "
                        + "10 m lower every 27 m instead of every 71 m."));
    }

    @Test
    void a_steep_set_up_is_said_to_be_rounded_out_from_its_height() {
        List<String> said = said(result ->
                with(result, sure(11), sure(Math.atan(is(result, "landing flap") ? 10.0 / 27 : 10.0 / 71)), sure(0)));
        assertThat(said).anyMatch(s -> s.matches("Landing flap: .*every 27 m.* Flare from [0-9.]+ m\\."));
    }

    @Test
    void what_cannot_be_told_apart_is_said_to_be_too_close_to_call() {
        List<String> said = said(result -> with(result, unsure(11), unsure(0.2), unsure(0.01)));
        assertThat(said)
                .contains("Landing speed: too close to call. All set-ups approach at 11.0 m/s to 11.0 m/s.")
                .contains("Elevator with take-off flap, landing flap and airbrake: too close to call. Program no mix; "
                        + "trim in the air.")
                .contains("Take-off flap, landing flap and airbrake: no clear difference in descent angle from clean.");
        assertThat(said).noneMatch(s -> s.contains("does not land slower"));
    }

    @Test
    void the_elevator_that_ends_first_and_the_wing_that_may_drop_are_named() {
        List<String> said = said(result -> new Copy(result)
                .notes(is(result, "clean") ? List.of(Message.of("note.elevator-before-wing")) : List.of())
                .stall(new FirstStall(
                        Side.BOTH, 0.5, "", is(result, "airbrake") ? Manner.MAY_DROP_A_WING : Manner.SAGS))
                .get());
        assertThat(said)
                .contains("Clean: you run out of up elevator before the wing stalls.")
                .contains("Airbrake: may drop a wing when flown too slowly. Keep to the approach speed.");
    }

    @Test
    void an_unstable_model_is_warned_of_before_all_else() {
        List<String> said = said(result -> new Copy(result)
                .notes(List.of(Message.of(is(result, "clean") ? "note.hardly-stable" : "note.unstable")))
                .get());
        assertThat(said.get(0))
                .startsWith("Take-off flap, landing flap and airbrake: ")
                .contains("Do not fly it like this; move the balance forward.");
        assertThat(said.get(1)).startsWith("Clean: ").contains("Move the balance forward before you fly it.");
    }

    /** Which of two lands slowest is not known: the speed that is given must not be too slow for one of them. */
    @Test
    void set_ups_named_together_come_in_at_the_faster_speed() {
        List<String> said = said(result -> {
            boolean brake = is(result, "airbrake");
            double speed = brake ? 11.5 : is(result, "landing flap") ? 11.2 : 20;
            Headline approach = new Headline.Known(speed, speed - 0.7, speed + 0.7, Basis.ASSUMED);
            return with(result, approach, sure(0.2), sure(0));
        });
        assertThat(said)
                .contains("Landing flap and airbrake: land slowest, too close to call between them. Approach at "
                        + "11.5 m/s.");
    }

    @Test
    void flaps_that_nobody_measured_are_spoken_of_where_they_go_far_down() {
        String sentence = "Nobody has measured such throws at this size: steepness may be out by a third.";
        assertThat(said(result -> result)).contains(sentence);
        SetUpResult clean = answer.comparison().packs().get(0).setUps().get(0);
        assertThat(said(result -> clean)).doesNotContain(sentence);
    }

    /** Whatever its numbers are, a set-up that drops in after its round-out is not recommended for landing or steepness. */
    @Test
    void a_set_up_that_ends_its_round_out_below_its_stall_is_warned_of_and_not_recommended() {
        List<String> said = said(result -> {
            boolean brake = is(result, "airbrake");
            SetUpResult changed =
                    with(result, sure(brake ? 9 : 12), sure(Math.atan(brake ? 10.0 / 27 : 10.0 / 71)), sure(0));
            return brake
                    ? new Copy(changed)
                            .notes(List.of(Message.of("note.flare-stalls")))
                            .get()
                    : changed;
        });
        assertThat(said.get(0)).startsWith("Airbrake: in the flare it ends below its stall");
        assertThat(said.subList(1, said.size()))
                .noneMatch(s -> s.contains("lands slowest") && s.startsWith("Airbrake"))
                .noneMatch(s -> s.contains("comes down steeper") && s.startsWith("Airbrake"));
    }

    /** A set-up by itself that is warned of gets its speed told, but nobody is told to come in at it. */
    @Test
    void a_lone_set_up_that_is_warned_of_is_not_told_to_come_in() {
        SetUpResult brake = answer.comparison().packs().get(0).setUps().get(3);
        SetUpResult safe = with(brake, sure(10), sure(0.2), sure(0));
        SetUpResult warned =
                new Copy(safe).notes(List.of(Message.of("note.flare-stalls"))).get();
        assertThat(alone(safe)).anyMatch(s -> s.startsWith("Approach at 10.0 m/s"));
        assertThat(alone(warned))
                .noneMatch(s -> s.contains("Approach at"))
                .anyMatch(s -> s.startsWith("At 10.0 m/s it loses 10 m every 49 m; mind the warning."));
    }

    @Test
    void who_lands_slower_but_is_warned_of_is_passed_over() {
        List<String> said = said(result -> {
            boolean brake = is(result, "airbrake");
            SetUpResult changed =
                    with(result, sure(is(result, "landing flap") ? 9 : brake ? 10 : 12), sure(0.2), sure(0));
            return is(result, "landing flap")
                    ? new Copy(changed)
                            .stall(new FirstStall(Side.LEFT, 0.7, "ailerons", Manner.MAY_DROP_A_WING))
                            .get()
                    : changed;
        });
        assertThat(said.get(0)).startsWith("Landing flap: may drop a wing");
        assertThat(said).contains("Airbrake: lands slowest of those without a warning. Approach at 10.0 m/s.");
    }

    /** Where nobody is free of a warning, the one whose worst ranks least is named with its speed; never where nobody may fly. */
    @Test
    void where_all_are_warned_of_the_least_bad_is_named_with_its_speed() {
        List<String> said = said(result -> {
            SetUpResult flown = with(result, sure(is(result, "airbrake") ? 9 : 11), sure(0.2), sure(0));
            return is(result, "landing flap")
                    ? new Copy(flown)
                            .stall(new FirstStall(Side.LEFT, 0.7, "ailerons", Manner.MAY_DROP_A_WING))
                            .get()
                    : new Copy(flown)
                            .notes(List.of(Message.of("note.flare-all-lift")))
                            .get();
        });
        assertThat(said)
                .contains("Landing: no set-up is free of a warning. The least bad: landing flap. Approach at 11.0 m/s "
                        + "or a little more.")
                .noneMatch(s -> s.contains("lands slowest"));
        assertThat(said(result -> new Copy(with(result, sure(11), sure(0.2), sure(0)))
                        .notes(List.of(Message.of("note.unstable")))
                        .get()))
                .noneMatch(s -> s.contains("The least bad"));
    }

    @Test
    void there_are_eight_sentences_at_most() {
        List<String> codes =
                List.of("note.unstable", "note.servo.overpowered", "note.flare-stalls", "note.tail-near-stall");
        assertThat(said(result -> new Copy(result)
                        .notes(codes.stream().map(Message::of).toList())
                        .get()))
                .hasSizeLessThanOrEqualTo(8);
        assertThat(said(result -> result)).hasSizeLessThanOrEqualTo(8);
    }

    @Test
    void the_caution_comes_last_whatever_was_found() {
        List<List<String>> all = new ArrayList<>();
        all.add(said(result -> result));
        Headline none = new Headline.Unknown("why.no-stall");
        all.add(said(result -> with(result, none, none, none)));
        for (List<String> said : all) {
            assertThat(said.get(said.size() - 1)).isEqualTo(LAST);
        }
        assertThat(all.get(1).get(0)).contains("no answer was found");
    }

    private static SetUpResult with(SetUpResult result, Headline approach, Headline descent, Headline change) {
        return new Copy(result)
                .numbers(approach, descent, change)
                .stall(new FirstStall(Side.BOTH, 0.3, "flaps", Manner.SAGS))
                .get();
    }

    /** A result with some numbers changed. */
    private static final class Copy {
        private final SetUpResult of;
        private Headline approach;
        private Headline descent;
        private Headline change;
        private FirstStall stall;
        private List<Message> notes;

        Copy(SetUpResult of) {
            this.of = of;
            approach = of.approachSpeed();
            descent = of.descentAngle();
            change = of.number(FlightQuantity.ELEVATOR_CHANGE);
            stall = of.firstStall();
            notes = of.notes();
        }

        Copy numbers(Headline newApproach, Headline newDescent, Headline newChange) {
            approach = newApproach;
            descent = newDescent;
            change = newChange;
            return this;
        }

        Copy stall(FirstStall newStall) {
            stall = newStall;
            return this;
        }

        Copy notes(List<Message> newNotes) {
            notes = newNotes;
            return this;
        }

        SetUpResult get() {
            return new SetUpResult(
                    of.setUp(),
                    of.headlines()
                            .with(Map.of(
                                    APPROACH_SPEED,
                                    approach,
                                    DESCENT_ANGLE,
                                    descent,
                                    ELEVATOR_CHANGE,
                                    change,
                                    LANDING_DISTANCE,
                                    sure(40),
                                    LANDING_DISTANCE_IN_WIND,
                                    sure(35))),
                    stall,
                    of.sweep(),
                    of.load(),
                    of.servos(),
                    of.field(),
                    of.oneSided(),
                    notes);
        }
    }
}
