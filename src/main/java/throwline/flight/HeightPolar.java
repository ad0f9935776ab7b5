package throwline.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import throwline.flight.Attitude.ElevatorLimit;
import throwline.liftingline.AngleWalk;
import throwline.liftingline.StallReading;
import throwline.model.Pack;
import throwline.numerics.Interpolation;

/**
 * The balanced model at one height over lift, from below the approach up to its most lift: drag, linear in the square of
 * lift between the angles solved, which is exact for induced drag, and elevator, linear in lift. Below the angles
 * solved both go on along their first straight line, beyond the most lift they stay.
 */
final class HeightPolar {

    private static final double STEP = Math.toRadians(2);
    private static final int MOST_POINTS = 21;

    /** Between the last step that is balanced and the first at the elevator's stop the walk goes on in parts of a step. */
    private static final int PARTS = 4;

    /** As in the search for the stall: past this share of the wing nothing carries more (PRACTICE, methods manual 6.5). */
    private static final double HALF = 0.5;

    /** The elevator's stop ends the walk where this share of the most lift is still carried there: lift has teeth. */
    private static final double NEARLY = 0.99;

    private final List<Attitude> rising = new ArrayList<>();
    private boolean limitedByElevator;
    private boolean converged;

    /**
     * Walks up from a step below the approach until half of the wing is past its stall or the elevator is at its stop.
     *
     * @param trimmer the model at the height
     * @param pack with this battery
     * @param speed m/s
     * @param alpha angle of attack at the approach in free air, rad
     */
    HeightPolar(Trimmer trimmer, Pack pack, double speed, double alpha) {
        this(angle -> trimmer.at(pack, speed, angle), alpha);
    }

    /** The same for any way in which a model is balanced at an angle of attack. */
    HeightPolar(DoubleFunction<Attitude> model, double alpha) {
        AngleWalk<Attitude> walk = AngleWalk.up(
                alpha - STEP,
                STEP,
                MOST_POINTS,
                (angle, before) -> model.apply(angle),
                w -> w.size() > 2 && ends(w.last()));
        List<Attitude> walked = walk.points();
        if (walk.ended()) {
            inParts(model, walked, walked.remove(walked.size() - 1));
        }
        refine(model, walked);
        converged = walk.ended() && walked.stream().allMatch(Attitude::converged);
        for (Attitude attitude : walked) {
            if (rising.size() < 2 || attitude.lift() > last().lift()) {
                rising.add(attitude);
            }
        }
    }

    private static boolean ends(Attitude here) {
        return here.elevatorLimit() == ElevatorLimit.UP
                || StallReading.of(here.wing()).stalledShare() >= HALF;
    }

    /** On in parts of a step to the end, and to where the elevator reaches its stop if that is the end. */
    private void inParts(DoubleFunction<Attitude> model, List<Attitude> walked, Attitude beyond) {
        Attitude before = walked.get(walked.size() - 2);
        Attitude last = walked.get(walked.size() - 1);
        Attitude next = beyond;
        double from = last.alpha();
        for (int part = 1; part < PARTS; part++) {
            Attitude here = model.apply(from + part * (beyond.alpha() - from) / PARTS);
            if (ends(here)) {
                next = here;
                break;
            }
            walked.add(here);
            before = last;
            last = here;
        }
        if (next.elevatorLimit() != ElevatorLimit.UP) {
            if (next.lift() < last.lift()) {
                walked.add(next);
            }
            return;
        }
        double perAngle = (last.elevator() - before.elevator()) / (last.alpha() - before.alpha());
        double left = perAngle < 0 ? (next.elevator() - last.elevator()) / perAngle : 0;
        Attitude end = model.apply(Math.min(next.alpha(), last.alpha() + left));
        double most = walked.stream().mapToDouble(Attitude::lift).max().orElse(0);
        limitedByElevator =
                end.lift() > NEARLY * most && StallReading.of(end.wing()).margin() > 0;
        walked.add(end);
    }

    /** Around the first top that is nearly the highest, where it has neighbours: halves of the steps, then the top of a parabola. */
    private static void refine(DoubleFunction<Attitude> model, List<Attitude> walked) {
        double most = walked.stream().mapToDouble(Attitude::lift).max().orElse(0);
        int top = IntStream.range(0, walked.size())
                .filter(i -> walked.get(i).lift() >= NEARLY * most)
                .filter(i -> i == walked.size() - 1
                        || walked.get(i + 1).lift() < walked.get(i).lift())
                .findFirst()
                .orElse(0);
        if (top == 0 || top == walked.size() - 1) {
            return;
        }
        Attitude middle = walked.get(top);
        walked.add(top + 1, model.apply((middle.alpha() + walked.get(top + 1).alpha()) / 2));
        walked.add(top, model.apply((walked.get(top - 1).alpha() + middle.alpha()) / 2));
        int highest = top + 1;
        for (int i = top; i <= top + 2; i++) {
            highest = walked.get(i).lift() > walked.get(highest).lift() ? i : highest;
        }
        Attitude peak =
                model.apply(AngleWalk.Peak.of(walked.get(highest - 1), walked.get(highest), walked.get(highest + 1))
                        .alpha());
        walked.add(peak.alpha() > walked.get(highest).alpha() ? highest + 1 : highest, peak);
    }

    private Attitude last() {
        return rising.get(rising.size() - 1);
    }

    /** False where some part is not a solution. */
    boolean converged() {
        return converged;
    }

    /** Most lift that wing and elevator give. */
    double limit() {
        return last().lift();
    }

    /** True where the elevator's travel ends before the wing lets go. */
    boolean limitedByElevator() {
        return limitedByElevator;
    }

    double drag(double wanted) {
        double lift = Math.min(wanted, limit());
        int k = interval(lift);
        Attitude a = rising.get(k);
        Attitude b = rising.get(k + 1);
        double squares = b.lift() * b.lift() - a.lift() * a.lift();
        double share = a.lift() > 0 && squares > 0
                ? (lift * lift - a.lift() * a.lift()) / squares
                : (lift - a.lift()) / (b.lift() - a.lift());
        return Interpolation.between(a.drag(), b.drag(), share);
    }

    double elevator(double wanted) {
        double lift = Math.min(wanted, limit());
        int k = interval(lift);
        Attitude a = rising.get(k);
        Attitude b = rising.get(k + 1);
        return Interpolation.between(a.elevator(), b.elevator(), (lift - a.lift()) / (b.lift() - a.lift()));
    }

    private int interval(double lift) {
        int k = 0;
        while (k < rising.size() - 2 && rising.get(k + 1).lift() < lift) {
            k++;
        }
        return k;
    }
}
