package throwline.study;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.numerics.Interpolation;
import throwline.sizing.MixCurve;
import throwline.study.Comparison.PackResult;
import throwline.study.FindResult.TrimFound;
import throwline.study.SetUpResult.SpeedPoint;

/**
 * Change that flights made to the elevator of a set-up against the reference, over speed: from the sweeps before and
 * after. Part of the way into the set-up it is that part. Methods manual 21.7.
 *
 * @param later what it became greater by, rad, over the logarithm of speed; empty where a sweep is missing
 * @param change the elevator change after the flights
 */
record ElevatorAfterFlights(Optional<UnivariateFunction> later, Headline change) {

    static ElevatorAfterFlights of(Learnt told, String pack, SetUpResult after) {
        String reference = told.before().model().reference().name();
        Optional<UnivariateFunction> own = later(told, pack, after.setUp().name());
        Optional<UnivariateFunction> other = later(told, pack, reference);
        return new ElevatorAfterFlights(
                own.flatMap(mine -> other.map(theirs -> (UnivariateFunction) v -> mine.value(v) - theirs.value(v))),
                after.number(FlightQuantity.ELEVATOR_CHANGE));
    }

    private static Optional<UnivariateFunction> later(Learnt told, String pack, String setUp) {
        Optional<SetUpResult> before = told.before().packs().stream()
                .filter(p -> p.pack().name().equals(pack))
                .map(PackResult::setUps)
                .flatMap(List::stream)
                .filter(r -> r.setUp().name().equals(setUp))
                .findFirst();
        return before.flatMap(then -> told.after(pack, setUp).flatMap(now -> later(then.sweep(), now.sweep())));
    }

    private static Optional<UnivariateFunction> later(List<SpeedPoint> before, List<SpeedPoint> after) {
        if (before.size() < 2 || before.size() != after.size()) {
            return Optional.empty();
        }
        double[] speeds = before.stream().mapToDouble(p -> Math.log(p.speed())).toArray();
        double[] moved = new double[speeds.length];
        for (int i = 0; i < moved.length; i++) {
            moved[i] = after.get(i).elevator() - before.get(i).elevator();
        }
        UnivariateFunction line = new LinearInterpolator().interpolate(speeds, moved);
        double last = speeds[speeds.length - 1];
        return Optional.of(v -> line.value(Interpolation.clamp(v, speeds[0], last)));
    }

    /** What the elevator against the reference became greater by at a speed, rad. */
    double at(double speed) {
        return later.map(moved -> moved.value(Math.log(speed))).orElse(0.0);
    }

    /**
     * A change put right, with the band that the change of the set-up has after the flights.
     *
     * @param before the change
     * @param speed at which, m/s
     * @param share of the way into the set-up
     */
    Headline changed(Headline before, double speed, double share) {
        if (!(before instanceof Headline.Known known)
                || !(change instanceof Headline.Known like)
                || like.learnt().isEmpty()) {
            return before;
        }
        Headline.FromFlights old = like.learnt().get();
        double value = known.value() + share * at(speed);
        double down = (known.value() - known.low()) * narrower(like.value() - like.low(), old.value() - old.low());
        double up = (known.high() - known.value()) * narrower(like.high() - like.value(), old.high() - old.value());
        return new Headline.Known(value, value - down, value + up, like.basis(), known.shared());
    }

    private static double narrower(double now, double before) {
        return before > 0 ? now / before : 1;
    }

    /** A mix put right at all its points. */
    TrimFound after(TrimFound found, Model model) {
        double share = share(found.to(), model);
        return new TrimFound(
                found.from(),
                found.to(),
                found.curve()
                        .map(curve -> new MixCurve(
                                curve.speed(),
                                curve.points().stream()
                                        .map(p -> new MixCurve.Point(
                                                p.lever(), p.elevator() + p.lever() * share * at(curve.speed())))
                                        .toList(),
                                curve.straightError(),
                                curve.otherSpeeds().stream()
                                        .map(o -> new MixCurve.AtSpeed(o.speed(), o.elevator() + share * at(o.speed())))
                                        .toList())),
                found.curve()
                        .map(curve -> changed(found.whole(), curve.speed(), share))
                        .orElse(found.whole()),
                found.shortOf());
    }

    /** How far into the set-up of the model this one goes: 1 for itself. */
    private static double share(SetUp part, Model model) {
        double whole = model.setUps().stream()
                .filter(s -> s.name().equals(part.name()))
                .mapToDouble(ElevatorAfterFlights::largest)
                .findFirst()
                .orElse(0);
        return whole > 0 ? Math.min(1, largest(part) / whole) : 1;
    }

    private static double largest(SetUp setUp) {
        return setUp.deflections().values().stream()
                .mapToDouble(Math::abs)
                .max()
                .orElse(0);
    }
}
