package throwline.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import throwline.correction.Expectation;
import throwline.correction.Factors;
import throwline.correction.FlownRows;
import throwline.correction.Flying;
import throwline.correction.NotedReadings;
import throwline.correction.Posterior;
import throwline.correction.Reading;
import throwline.correction.Worth;
import throwline.flight.Stall;
import throwline.model.Stick;
import throwline.notes.FlownDay;
import throwline.notes.FlownDay.Where;
import throwline.notes.FlownDay.Wind;
import throwline.notes.FlownDay.WindTold;
import throwline.notes.Noticed;
import throwline.notes.Noticed.FlownAt;
import throwline.notes.Noticed.Going;
import throwline.notes.Noticed.Told;
import throwline.notes.ToldBy;
import throwline.study.Learnt.Advice;

/** Further measurements that would narrow the widest bands most for their effort. Methods manual 21.6. */
final class NextFlights {

    /** What leaves more than this is not worth an advice. */
    private static final double ENOUGH_KNOWN = 0.95;

    /** Effort in minutes (PRACTICE): four stalls or glides both ways, a trim read on the bench, rolls. */
    private static final double FOUR = 12;

    private static final double TRIM = 2;
    private static final double ROLL = 1;

    private static final String NEXT = "the next flight";

    private final Comparison before;
    private final Comparison after;
    private final FlownFleet fleet;
    private final Posterior posterior;
    private final Factors factors;

    NextFlights(Comparison before, Comparison after, FlownFleet fleet, Posterior posterior, Factors factors) {
        this.before = before;
        this.after = after;
        this.fleet = fleet;
        this.posterior = posterior;
        this.factors = factors;
    }

    /** At most one advice for each of stall, descent, elevator and roll, the best for its effort first; at most three. */
    List<Advice> advice() {
        String pack = after.packs().get(0).pack().name();
        FlownDay day = new FlownDay(
                NEXT,
                "",
                pack,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                FlownDay.AirOfDay.unknown(),
                Optional.of(new Wind(before.model().field().wind(), WindTold.FEEL, Where.MODEL)),
                List.of(),
                List.of(),
                true,
                "",
                Optional.empty());
        List<Candidate> candidates = new ArrayList<>();
        for (SetUpResult result : after.packs().get(0).setUps()) {
            fleet.now(result.setUp().name(), pack).ifPresent(f -> candidates.addAll(candidates(result, f)));
        }
        NotedReadings noted =
                new NotedReadings(factors, fleet, day, before.model().field());
        List<List<Reading>> readings =
                candidates.stream().map(c -> noted.of(c.noticed)).toList();
        Worth worth = new Worth(posterior, factors);
        List<Ranked> ranked = new ArrayList<>();
        for (int i = 0; i < candidates.size(); i++) {
            if (!readings.get(i).isEmpty()) {
                Candidate c = candidates.get(i);
                double left = worth.left(c.row, 0, readings.get(i));
                if (left < ENOUGH_KNOWN) {
                    ranked.add(new Ranked((1 - left) * c.band / c.usual, c.advice(left)));
                }
            }
        }
        return List.of(
                        FlightQuantity.STALL_SPEED,
                        FlightQuantity.DESCENT_ANGLE,
                        FlightQuantity.ELEVATOR,
                        FlightQuantity.ROLL_RATE)
                .stream()
                .flatMap(quantity -> ranked.stream()
                        .filter(r -> r.advice.quantity() == quantity)
                        .max(Comparator.comparingDouble(Ranked::gain))
                        .stream())
                .limit(3)
                .map(Ranked::advice)
                .toList();
    }

    private record Ranked(double gain, Advice advice) {}

    /** A measurement and the row that it is meant for; {@code usual} is the band that such rows have before any flight. */
    private record Candidate(
            String what,
            String setUp,
            String stick,
            Noticed noticed,
            FlightQuantity quantity,
            Expectation row,
            double band,
            double usual,
            double minutes) {
        Advice advice(double left) {
            return new Advice(what, setUp, stick, quantity, setUp, band, left * band, minutes);
        }
    }

    private List<Candidate> candidates(SetUpResult result, Flying flying) {
        List<Candidate> all = new ArrayList<>();
        String setUp = result.setUp().name();
        FlownRows rows = new FlownRows(flying, Stall.APPROACH);
        Noticed.Speed comingIn = new Noticed.Speed(FlownAt.COMING_IN, OptionalDouble.empty());
        if (result.stallSpeed() instanceof Headline.Known stall) {
            Noticed.SpeedRead read =
                    new Noticed.SpeedRead(OptionalDouble.of(stall.value()), OptionalDouble.empty(), Going.BOTH_WAYS);
            Noticed noticed = new Noticed.Stall(told("stall " + setUp, ToldBy.GPS, 4), setUp, read);
            all.add(candidate("stall", setUp, "", noticed, FlightQuantity.STALL_SPEED, rows.stall(), stall, FOUR));
        }
        if (result.descentAngle() instanceof Headline.Known angle
                && result.approachSpeed() instanceof Headline.Known speed) {
            double height = 30;
            double time = height / (speed.value() * Math.sin(angle.value()));
            Noticed noticed = new Noticed.Glide(
                    told("glide " + setUp, ToldBy.BAROMETER, 4),
                    setUp,
                    height,
                    OptionalDouble.of(speed.value() * Math.cos(angle.value()) * time),
                    OptionalDouble.of(time),
                    Going.BOTH_WAYS,
                    comingIn);
            all.add(candidate("glide", setUp, "", noticed, FlightQuantity.DESCENT_ANGLE, rows.descent(), angle, FOUR));
        }
        if (result.number(FlightQuantity.ELEVATOR) instanceof Headline.Known elevator) {
            Noticed noticed = new Noticed.Trim(
                    told("trim " + setUp, ToldBy.BENCH, 1),
                    setUp,
                    elevator.value(),
                    false,
                    comingIn,
                    Noticed.Throttle.SHUT);
            all.add(candidate("trim", setUp, "", noticed, FlightQuantity.ELEVATOR, rows.elevator(), elevator, TRIM));
        }
        result.rollRates().stream().limit(1).forEach(roll -> {
            if (roll.rate() instanceof Headline.Known rate && rate.value() > 0 && isRoll(roll.stick())) {
                Noticed noticed = new Noticed.Roll(
                        told("roll " + setUp, ToldBy.STOPWATCH, 2),
                        setUp,
                        roll.stick(),
                        1,
                        2 * Math.PI / rate.value(),
                        comingIn);
                all.add(candidate(
                        "roll",
                        setUp,
                        roll.stick(),
                        noticed,
                        FlightQuantity.ROLL_RATE,
                        rows.roll(roll.stick()),
                        rate,
                        ROLL));
            }
        });
        return all;
    }

    private boolean isRoll(String stick) {
        return before.model().sticks().stream()
                .anyMatch(s -> s instanceof Stick.Roll && s.name().equals(stick));
    }

    private static Candidate candidate(
            String what,
            String setUp,
            String stick,
            Noticed noticed,
            FlightQuantity quantity,
            Expectation row,
            Headline.Known number,
            double minutes) {
        boolean additive = quantity == FlightQuantity.ELEVATOR;
        double half = (number.high() - number.low()) / 2;
        double unit = additive ? 1 : Math.abs(number.value());
        double before = number.learnt()
                .map(old -> (old.high() - old.low()) / 2 / (additive ? 1 : Math.abs(old.value())))
                .orElse(half / unit);
        return new Candidate(what, setUp, stick, noticed, quantity, row, half / unit, before, minutes);
    }

    private static Told told(String source, ToldBy by, int times) {
        return new Told(source, by, OptionalDouble.empty(), OptionalDouble.empty(), times, true);
    }
}
