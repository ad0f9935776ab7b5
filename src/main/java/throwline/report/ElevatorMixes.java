package throwline.report;

import java.util.ArrayList;
import java.util.List;
import throwline.flight.StartingMix;
import throwline.model.Model;
import throwline.study.EdgeThrow;
import throwline.study.Headline;
import throwline.study.SetUpResult;
import throwline.study.SetUpResult.SpeedPoint;
import throwline.units.Dimension;
import throwline.units.Key;
import throwline.units.Measure;

/**
 * Elevator at three speeds, set-up by set-up: at about the speed to come in at, a quarter and a half
 * faster. The speeds are ones at which both the set-up and the reference have a steady descent.
 */
public final class ElevatorMixes {

    /** Speeds over the speed to come in at. */
    private static final double[] SPEEDS = {1, 1.25, 1.5};

    /** Less change than this, and the first flight starts without a mix, rad (PRACTICE, methods manual 17.2). */
    private static final double TOO_LITTLE = Math.toRadians(2);

    private ElevatorMixes() {}

    /**
     * One speed of one set-up; angles in rad, trailing edge down positive.
     *
     * @param setUp its name
     * @param speed m/s
     * @param elevator where it sits
     * @param change against the reference at the same speed
     * @param half of the change, for the first flight; 0 where the change is below 2 degrees
     * @param edge turns them into distances at the elevator's trailing edge
     */
    public record Mix(
            @Key("setup") String setUp,
            double speed,
            @Measure(Dimension.ANGLE) double elevator,
            @Measure(Dimension.ANGLE) double change,
            @Measure(Dimension.ANGLE) double half,
            @Key(Key.NONE) EdgeThrow edge) {

        /** Distance of the trailing edge from neutral, m. */
        @Key(value = "elevatorStraight", after = "edge")
        public double elevatorStraight() {
            return edge.distance(elevator);
        }

        /** Distance of a throw of the change, m. */
        @Key(value = "changeStraight", after = "elevatorStraight")
        public double changeStraight() {
            return edge.distance(change);
        }

        /** Distance of a throw of half of it, m. */
        @Key(value = "halfStraight", after = "changeStraight")
        public double halfStraight() {
            return edge.distance(half);
        }
    }

    /** The mixes of all set-ups but the reference. */
    public static List<Mix> of(Model model, List<SetUpResult> setUps) {
        List<SpeedPoint> reference = setUps.stream()
                .filter(r -> model.isReference(r.setUp()))
                .findFirst()
                .map(SetUpResult::sweep)
                .orElse(List.of());
        List<Mix> mixes = new ArrayList<>();
        for (SetUpResult result : setUps) {
            if (!model.isReference(result.setUp()) && result.approachSpeed() instanceof Headline.Known approach) {
                mixes.addAll(mixes(result, reference, approach.value(), edge(model)));
            }
        }
        return mixes;
    }

    /** The elevator's trailing edge. */
    public static EdgeThrow edge(Model model) {
        return new EdgeThrow(model.tail().throwChord());
    }

    private static List<Mix> mixes(SetUpResult result, List<SpeedPoint> reference, double approach, EdgeThrow edge) {
        List<Mix> all = new ArrayList<>();
        for (SpeedPoint here : result.sweep()) {
            reference.stream()
                    .filter(there -> there.speed() == here.speed())
                    .findFirst()
                    .ifPresent(there -> all.add(mix(result, here, there, edge)));
        }
        List<Mix> chosen = new ArrayList<>();
        for (double ratio : SPEEDS) {
            all.stream()
                    .min((a, b) -> Double.compare(
                            Math.abs(Math.log(a.speed() / (ratio * approach))),
                            Math.abs(Math.log(b.speed() / (ratio * approach)))))
                    .filter(mix -> !chosen.contains(mix))
                    .ifPresent(chosen::add);
        }
        return chosen;
    }

    private static Mix mix(SetUpResult result, SpeedPoint here, SpeedPoint there, EdgeThrow edge) {
        double change = here.elevator() - there.elevator();
        double half = Math.abs(change) < TOO_LITTLE ? 0 : StartingMix.of(change);
        return new Mix(result.setUp().name(), here.speed(), here.elevator(), change, half, edge);
    }
}
