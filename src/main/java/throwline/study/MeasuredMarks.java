package throwline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import throwline.correction.Doubt;
import throwline.correction.Expectation;
import throwline.correction.Factor;
import throwline.correction.FlownRows;
import throwline.correction.Flying;
import throwline.correction.Posterior;
import throwline.correction.Reading;
import throwline.correction.RowBand;
import throwline.flight.Stall;
import throwline.numerics.Interpolation;
import throwline.study.HeadlineNumbers.RollRate;
import throwline.study.Learnt.Measured;

/**
 * Marks of what each measurement alone would have the number of its set-up be: only the set-up's own error is moved
 * until the reading fits. Its band holds the noise of measuring and what is not known of wind, air and speed of that
 * flight.
 */
final class MeasuredMarks {

    private static final int ROUNDS = 40;

    /** Longest step, standard deviations. */
    private static final double FARTHEST = 5;

    private final List<SetUpResult> before;
    private final FlownFleet fleet;
    private final String pack;
    private final Posterior posterior;
    private final List<Reading> readings;
    private final double[] sds;
    private final double[] after;

    MeasuredMarks(Comparison before, FlownFleet fleet, Posterior posterior, List<Reading> readings) {
        this.before = before.packs().get(0).setUps();
        this.fleet = fleet;
        pack = before.packs().get(0).pack().name();
        this.posterior = posterior;
        this.readings = List.copyOf(readings);
        sds = posterior.priorSds();
        after = posterior.state();
    }

    /** Marks of all that was flown. */
    List<Measured> of(List<FlownFor> flown) {
        List<Measured> marks = new ArrayList<>();
        for (FlownFor one : flown) {
            Optional<SetUpResult> result = before.stream()
                    .filter(r -> r.setUp().name().equals(one.setUp()))
                    .findFirst();
            Optional<Flying> flying = fleet.now(one.setUp(), pack);
            if (result.isPresent() && flying.isPresent()) {
                mark(one, result.get(), flying.get()).ifPresent(marks::add);
            }
        }
        return marks;
    }

    private Optional<Measured> mark(FlownFor one, SetUpResult result, Flying flying) {
        FlownRows rows = new FlownRows(flying, Stall.APPROACH);
        return switch (one.topic()) {
            case STALL -> mark(one, FlightQuantity.STALL_SPEED, result.stallSpeed(), rows.stall(), "lift of ", true);
            case GLIDE ->
                mark(one, FlightQuantity.DESCENT_ANGLE, result.descentAngle(), rows.descent(), "drag of ", true);
            case TRIM ->
                mark(
                        one,
                        FlightQuantity.ELEVATOR,
                        result.number(FlightQuantity.ELEVATOR),
                        rows.elevator(),
                        "elevator of ",
                        false);
            case ROLL -> result.rollRates().stream().findFirst().flatMap(roll -> roll(one, roll, rows));
            case FLOAT, OTHER -> Optional.empty();
        };
    }

    private Optional<Measured> roll(FlownFor one, RollRate roll, FlownRows rows) {
        return roll.rate() instanceof Headline.Known
                ? mark(one, FlightQuantity.ROLL_RATE, roll.rate(), rows.roll(roll.stick()), "roll of ", true)
                : Optional.empty();
    }

    private Optional<Measured> mark(
            FlownFor one, FlightQuantity quantity, Headline before, Expectation row, String kind, boolean ratio) {
        int own = places().getOrDefault(kind + one.setUp(), -1);
        if (own < 0 || !(before instanceof Headline.Known known)) {
            return Optional.empty();
        }
        Optional<Reading> best = Optional.empty();
        double most = 0;
        for (Reading reading : readings) {
            if (reading.source().equals(one.source())) {
                double tells = Math.abs(reading.expected().slopes(after, sds)[own]) / reading.sd();
                if (tells > most) {
                    most = tells;
                    best = Optional.of(reading);
                }
            }
        }
        return best.map(reading -> mark(one, quantity, known, row, ratio, reading, own));
    }

    private Measured mark(
            FlownFor one,
            FlightQuantity quantity,
            Headline.Known before,
            Expectation row,
            boolean ratio,
            Reading reading,
            int own) {
        double[] slopes = reading.expected().slopes(after, sds);
        double[] rows = row.slopes(after, sds);
        double variance = reading.sd() * reading.sd();
        for (int k = 0; k < slopes.length; k++) {
            if (rows[k] == 0 && slopes[k] != 0) {
                variance += Math.pow(slopes[k] * posterior.sd(k), 2);
            }
        }
        double each = rows[own] / slopes[own];
        double moved = row.at(fitting(reading, own)) - row.at(posterior.priorMeans());
        double half = RowBand.NINE_OF_TEN * Math.sqrt(variance) * Math.abs(each);
        double wrong = posterior.wrong().getOrDefault(one.source(), 0.0);
        int speed = places().getOrDefault("speed of " + one.source(), -1);
        return new Measured(
                one.setUp(),
                quantity,
                shown(before, moved, ratio),
                shown(before, moved - half, ratio),
                shown(before, moved + half, ratio),
                wrong > Doubt.CONTRADICTS,
                speed < 0 ? Double.NaN : Math.exp(after[speed]),
                quantity == FlightQuantity.DESCENT_ANGLE ? reading.value() : Double.NaN);
    }

    /** The state with the own error moved until the reading fits (Newton's method). */
    private double[] fitting(Reading reading, int own) {
        double[] state = after.clone();
        for (int round = 0; round < ROUNDS; round++) {
            double miss = reading.value() - reading.expected().at(state);
            double step = miss / reading.expected().slopes(state, sds)[own];
            state[own] += Interpolation.clamp(step, -FARTHEST, FARTHEST);
        }
        return state;
    }

    private static double shown(Headline.Known before, double moved, boolean ratio) {
        return ratio ? before.value() * Math.exp(moved) : before.value() + moved;
    }

    private Map<String, Integer> places() {
        Map<String, Integer> places = new java.util.HashMap<>();
        List<Factor> factors = posterior.factors();
        for (int i = 0; i < factors.size(); i++) {
            places.put(factors.get(i).name(), i);
        }
        return places;
    }
}
