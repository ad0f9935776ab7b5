package throwline.study;

import static throwline.study.FlightQuantity.APPROACH_SPEED;
import static throwline.study.FlightQuantity.DESCENT_ANGLE;
import static throwline.study.FlightQuantity.ELEVATOR;
import static throwline.study.FlightQuantity.STALL_SPEED;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import throwline.flight.Stall;
import throwline.study.FlyResult.Sensitivity;
import throwline.study.HeadlineNumbers.RollRate;
import throwline.units.Dimension;
import throwline.units.Quantity;

/**
 * Bands of one set-up that hold both the model's own errors and what the owner does not know. The numbers' answer to every
 * unknown is taken from trials with it off either way (a parabola through three points); then all errors are drawn together,
 * normal and independent, from a fixed seed, and nine of ten draws make the band.
 */
final class LikelyBands {

    /** Enough for the ends of a band to stand within 2 % of its width. */
    private static final int DRAWS = 4000;

    private static final int SEED = 20_251;

    /** Nine of ten normal errors lie inside 1.645 standard deviations. */
    private static final double NINE_OF_TEN = 1.6449;

    private static final int MOST_MATTERS = 3;

    /** What is measured on the bench in a minute is told first. */
    private static final String TAIL = "tail";

    private final List<InputUncertainty> unknowns;
    private final double[] middle;
    private final List<double[]> above;
    private final List<double[]> below;
    private final double[][] errors;

    private LikelyBands(List<InputUncertainty> unknowns, double[] middle, List<double[]> above, List<double[]> below) {
        this.unknowns = unknowns;
        this.middle = middle;
        this.above = above;
        this.below = below;
        errors = errors(unknowns.size());
    }

    /** Draws of the model's own error and those of so many unknowns, each normal, 1 where nine of ten lie within. */
    private static double[][] errors(int unknowns) {
        RandomGenerator random = new Well19937c(SEED);
        double[][] errors = new double[DRAWS][1 + unknowns];
        for (double[] draw : errors) {
            Arrays.setAll(draw, k -> random.nextGaussian() / NINE_OF_TEN);
        }
        return errors;
    }

    /** Flies the trials, on all processors; what comes out with nothing off is known from the result. */
    static LikelyBands of(PerturbedRun trial, List<InputUncertainty> unknowns, SetUpResult result) {
        return of(trial, unknowns, middle(result));
    }

    /** The numbers of {@link PerturbedRun#fly} with nothing off, from the result that they are of. */
    static double[] middle(SetUpResult result) {
        return IntStream.range(0, PerturbedRun.ROLLS + result.rollRates().size())
                .mapToDouble(
                        number -> headline(result, number) instanceof Headline.Known known ? known.value() : Double.NaN)
                .toArray();
    }

    /** The same from the numbers of {@link PerturbedRun#fly} with nothing off. */
    static LikelyBands of(PerturbedRun trial, List<InputUncertainty> unknowns, double[] middle) {
        List<double[]> flown = IntStream.range(0, 2 * unknowns.size())
                .parallel()
                .mapToObj(i -> {
                    InputUncertainty unknown = unknowns.get(i / 2);
                    return trial.fly(Map.of(unknown, i % 2 == 0 ? unknown.size() : -unknown.size()));
                })
                .toList();
        List<double[]> above = new ArrayList<>();
        List<double[]> below = new ArrayList<>();
        for (int k = 0; k < unknowns.size(); k++) {
            above.add(flown.get(2 * k));
            below.add(flown.get(1 + 2 * k));
        }
        return new LikelyBands(unknowns, middle, above, below);
    }

    /** How far a number moves with an unknown off by so many times its size; none where a trial has no number. */
    double answer(int number, int unknown, double times) {
        double up = above.get(unknown)[number] - middle[number];
        double down = below.get(unknown)[number] - middle[number];
        if (Double.isNaN(up) || Double.isNaN(down)) {
            return 0;
        }
        return times * (up - down) / 2 + times * times * (up + down) / 2;
    }

    /** The same result with these bands. */
    SetUpResult widened(SetUpResult result) {
        Map<FlightQuantity, Headline> wider = new EnumMap<>(FlightQuantity.class);
        wider.put(STALL_SPEED, widened(result.number(STALL_SPEED), PerturbedRun.STALL, 1));
        Headline approach = widened(result.number(APPROACH_SPEED), PerturbedRun.STALL, Stall.APPROACH);
        wider.put(APPROACH_SPEED, approach);
        wider.put(ELEVATOR, widened(result.number(ELEVATOR), PerturbedRun.ELEVATOR, 1));
        if (approach instanceof Headline.Known speed
                && widened(result.number(DESCENT_ANGLE), PerturbedRun.DESCENT, 1) instanceof Headline.Known angle) {
            wider.putAll(SetUpAnswer.ofDescent(speed.value(), angle));
        }
        List<RollRate> rolls = new ArrayList<>();
        for (int i = 0; i < result.rollRates().size(); i++) {
            RollRate roll = result.rollRates().get(i);
            rolls.add(new RollRate(roll.stick(), widened(roll.rate(), PerturbedRun.ROLLS + i, 1), roll.atItsStop()));
        }
        return result.with(new HeadlineNumbers(result.headlines().with(wider).byQuantity(), rolls));
    }

    /** The band of one number; never narrower than the model's own. */
    private Headline widened(Headline headline, int number, double times) {
        if (!(headline instanceof Headline.Known known) || Double.isNaN(middle[number])) {
            return headline;
        }
        if (IntStream.range(0, unknowns.size())
                .allMatch(k -> answer(number, k, 1) == 0 && answer(number, k, -1) == 0)) {
            return headline;
        }
        double up = known.high() - known.value();
        double down = known.value() - known.low();
        double[] draws = new double[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            double own = errors[i][0];
            double error = own * (own > 0 ? up : down);
            for (int k = 0; k < unknowns.size(); k++) {
                error += times * answer(number, k, errors[i][k + 1]);
            }
            draws[i] = known.value() + error;
        }
        Arrays.sort(draws);
        double low = Math.min(known.low(), draws[DRAWS / 20]);
        double high = Math.max(known.high(), draws[DRAWS - 1 - DRAWS / 20]);
        double wider = Math.pow((up + down) / (high - low), 2);
        double shared = Math.sqrt(1 - wider * (1 - known.shared() * known.shared()));
        return new Headline.Known(known.value(), low, high, known.basis(), shared);
    }

    /** The three inputs that move the numbers most, the incidence of the tail before others, measured by the bands of these numbers. */
    List<Sensitivity> matters(SetUpResult result) {
        List<Ranked> ranked = new ArrayList<>();
        Map<String, Ranked> airfoils = new LinkedHashMap<>();
        for (int k = 0; k < unknowns.size(); k++) {
            Ranked one = ranked(result, k);
            if (unknowns.get(k).kind().isAirfoil()) {
                airfoils.merge(unknowns.get(k).name(), one, (a, b) -> a.share >= b.share ? a : b);
            } else {
                ranked.add(one);
            }
        }
        ranked.addAll(airfoils.values());
        return ranked.stream()
                .filter(one -> one.share > 0)
                .sorted(Comparator.comparing((Ranked one) -> !one.matter.what().equals(TAIL))
                        .thenComparing(Comparator.comparingDouble((Ranked one) -> -one.share)))
                .limit(MOST_MATTERS)
                .map(Ranked::matter)
                .toList();
    }

    private record Ranked(double share, Sensitivity matter) {}

    private Ranked ranked(SetUpResult result, int unknown) {
        Ranked most = new Ranked(0, matter(unknown, PerturbedRun.STALL, 0));
        for (int number = 0; number < middle.length; number++) {
            Headline headline = headline(result, number);
            double moved = Math.max(Math.abs(answer(number, unknown, 1)), Math.abs(answer(number, unknown, -1)));
            if (headline instanceof Headline.Known known && known.high() > known.low()) {
                double share = 2 * moved / (known.high() - known.low());
                if (share > most.share) {
                    most = new Ranked(share, matter(unknown, number, moved));
                }
            }
        }
        return most;
    }

    private static Headline headline(SetUpResult result, int number) {
        return switch (number) {
            case PerturbedRun.STALL -> result.stallSpeed();
            case PerturbedRun.DESCENT -> result.descentAngle();
            case PerturbedRun.ELEVATOR -> result.number(FlightQuantity.ELEVATOR);
            default -> result.rollRates().get(number - PerturbedRun.ROLLS).rate();
        };
    }

    private Sensitivity matter(int unknown, int number, double moved) {
        InputUncertainty what = unknowns.get(unknown);
        return switch (number) {
            case PerturbedRun.STALL -> matter(what, "stall", moved, Dimension.SPEED);
            case PerturbedRun.DESCENT -> matter(what, "descent", moved, Dimension.ANGLE);
            case PerturbedRun.ELEVATOR -> matter(what, "elevator", moved, Dimension.ANGLE);
            default -> matter(what, "roll", moved, Dimension.ANGULAR_RATE);
        };
    }

    private static Sensitivity matter(InputUncertainty what, String number, double moved, Dimension dimension) {
        String kind =
                switch (what.kind()) {
                    case WEIGHT -> "weight";
                    case BALANCE -> "balance";
                    case TAIL_INCIDENCE -> TAIL;
                    case THROW -> "throw";
                    case AIRFOIL_LIFT, AIRFOIL_ANGLE, AIRFOIL_DRAG -> "airfoil";
                };
        return new Sensitivity(kind, what.name(), number, new Quantity(moved, dimension));
    }
}
