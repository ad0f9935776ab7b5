package throwline.study;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import throwline.sizing.CandidateFlight;
import throwline.sizing.FoundSetUp;
import throwline.sizing.SetUpWants;
import throwline.study.FindResult.ThrowBand;

/**
 * Band of a throw: if every prediction is off by the same share, somewhere inside its band, the wanted value is met
 * at another angle of the surface. Read by straight lines between the set-ups that were flown.
 */
final class ThrowBandOf {

    private final Bands bands;
    private final SetUpWants wants;

    ThrowBandOf(Bands bands, SetUpWants wants) {
        this.bands = bands;
        this.wants = wants;
    }

    /** The band; empty where no value was found, or nothing crosses it. */
    Optional<ThrowBand> around(FoundSetUp found) {
        ToDoubleFunction<CandidateFlight> value =
                wants.descent().isPresent() ? CandidateFlight::angle : CandidateFlight::stallSpeed;
        double wanted = wants.descent()
                .map(SetUpWants.WantedDescent::angle)
                .orElseGet(() -> wants.stallSpeed().orElseThrow());
        String quantity = wants.descent().isPresent() ? "descentAngle.moved" : "stallSpeed";
        if (!found.met() || found.line().size() < 2) {
            return Optional.empty();
        }
        Headline.Known band = bands.around(quantity, wanted);
        double least = wanted * wanted / band.high();
        double most = wanted * wanted / band.low();
        double atAnswer = angle(found, found.trial());
        double one = reach(found, value, atAnswer, wanted, least);
        double other = reach(found, value, atAnswer, wanted, most);
        if (Double.isNaN(one) || Double.isNaN(other)) {
            return open(found, one, other, atAnswer, value);
        }
        return Optional.of(new ThrowBand(Math.min(one, other), Math.max(one, other), false, false));
    }

    /** One end or both lie beyond what the surface can do. */
    private static Optional<ThrowBand> open(
            FoundSetUp found, double one, double other, double atAnswer, ToDoubleFunction<CandidateFlight> value) {
        List<CandidateFlight> line = found.line();
        double low = angle(found, line.get(0));
        double high = angle(found, line.get(line.size() - 1));
        boolean rising = value.applyAsDouble(line.get(line.size() - 1)) > value.applyAsDouble(line.get(0));
        double towardsLow = rising ? one : other;
        double towardsHigh = rising ? other : one;
        return Optional.of(new ThrowBand(
                Double.isNaN(towardsLow) ? low : Math.min(towardsLow, atAnswer),
                Double.isNaN(towardsHigh) ? high : Math.max(towardsHigh, atAnswer),
                Double.isNaN(towardsLow),
                Double.isNaN(towardsHigh)));
    }

    /** The angle nearest to the answer at which a value is met; not a number where it is not met on the line. */
    private static double reach(
            FoundSetUp found, ToDoubleFunction<CandidateFlight> value, double atAnswer, double wanted, double target) {
        double nearest = Double.NaN;
        for (int i = 1; i < found.line().size(); i++) {
            CandidateFlight from = found.line().get(i - 1);
            CandidateFlight to = found.line().get(i);
            double a = value.applyAsDouble(from) - target;
            double b = value.applyAsDouble(to) - target;
            if (a * b <= 0 && a != b) {
                double at = angle(found, from) + a / (a - b) * (angle(found, to) - angle(found, from));
                nearest =
                        Double.isNaN(nearest) || Math.abs(at - atAnswer) < Math.abs(nearest - atAnswer) ? at : nearest;
            }
        }
        return target == wanted ? atAnswer : nearest;
    }

    private static double angle(FoundSetUp found, CandidateFlight trial) {
        return found.lineOf() == FoundSetUp.Moved.FLAPS ? trial.flap() : trial.aileron();
    }
}
