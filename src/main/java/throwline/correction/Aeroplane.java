package throwline.correction;

import java.util.HashMap;
import java.util.Map;
import throwline.correction.SetUpErrors.Share;

/**
 * Errors of the predictions of one model as factors: for lift, drag, elevator and roll one common to all set-ups and one of
 * each set-up's own, growth of the drag error away from the approach speed, slope of the trim over speed, and weight and
 * balance of each pack. Methods manual 21.1.
 */
public final class Aeroplane {

    /** Whether the error of drag sits in parasite drag alone or in all of it: of ln drag for each unit of ln speed. */
    private static final double DRAG_OVER_SPEED = 0.14;

    /** Share by which the slope of trim over lift may be off (PRACTICE). */
    private static final double TRIM_SLOPE = 0.2;

    /** Weight and balance as their owner knows them: nine of ten within 1 % and 2 mm (PRACTICE). */
    private static final double WEIGHT = 0.01 / RowBand.NINE_OF_TEN;

    private static final double BALANCE = 0.002 / RowBand.NINE_OF_TEN;

    private final Factors factors;
    private final Map<String, Own> setUps = new HashMap<>();
    private final int dragOverSpeed;
    private final int trimSlope;
    private final int lift;
    private final int drag;
    private final int elevator;
    private final int roll;

    /** Own factors of a set-up: its errors, and what it has of the own parts of others. */
    private record Own(SetUpErrors errors, Map<String, Double> like, int lift, int drag, int elevator, int roll) {}

    /** One of four kinds of errors. */
    private interface Kind {
        int of(Own own);
    }

    /** An aeroplane whose factors join those of an estimate. */
    public Aeroplane(Factors factors) {
        this.factors = factors;
        lift = factors.place(Factor.standard("lift"));
        drag = factors.place(Factor.standard("drag"));
        dragOverSpeed = factors.place(Factor.standard("drag over speed"));
        elevator = factors.place(Factor.standard("elevator"));
        trimSlope = factors.place(Factor.standard("trim slope"));
        roll = factors.place(Factor.standard("roll"));
    }

    /** Takes in a set-up. */
    public void add(String setUp, SetUpErrors errors) {
        add(setUp, errors, Map.of());
    }

    /**
     * Takes in a set-up that resembles others.
     *
     * @param setUp its name
     * @param errors its errors
     * @param like what its own part has of the own parts of others, by their names: cosines, squares adding to no more than 1
     */
    public void add(String setUp, SetUpErrors errors, Map<String, Double> like) {
        setUps.put(
                setUp,
                new Own(
                        errors,
                        Map.copyOf(like),
                        own("lift", setUp),
                        own("drag", setUp),
                        own("elevator", setUp),
                        own("roll", setUp)));
    }

    private int own(String kind, String setUp) {
        return factors.place(Factor.standard(kind + " of " + setUp));
    }

    private Own of(String setUp) {
        Own own = setUps.get(setUp);
        if (own == null) {
            throw new IllegalArgumentException("no errors for set-up " + setUp);
        }
        return own;
    }

    private double error(double[] state, Share share, int common, Own own, Kind kind) {
        double mine = 0;
        double left = 1;
        for (Map.Entry<String, Double> other : own.like.entrySet()) {
            double cosine = other.getValue();
            mine += cosine * state[kind.of(of(other.getKey()))];
            left -= cosine * cosine;
        }
        return share.common() * state[common]
                + share.own() * (mine + Math.sqrt(Math.max(0, left)) * state[kind.of(own)]);
    }

    /** Error of the logarithm of the largest lift. */
    double lift(double[] state, String setUp) {
        Own own = of(setUp);
        return error(state, own.errors.lift(), lift, own, Own::lift);
    }

    /** Error of the logarithm of drag at equal lift, at a speed over the approach speed. */
    double drag(double[] state, String setUp, double speed) {
        Own own = of(setUp);
        return error(state, own.errors.drag(), drag, own, Own::drag)
                + DRAG_OVER_SPEED * state[dragOverSpeed] * Math.log(speed);
    }

    /** Error of the elevator, rad. */
    double elevator(double[] state, String setUp) {
        Own own = of(setUp);
        return error(state, own.errors.elevator(), elevator, own, Own::elevator);
    }

    /** Factor on the slope of trim over lift. */
    double trimSlope(double[] state) {
        return 1 + TRIM_SLOPE * state[trimSlope];
    }

    /** Error of the logarithm of roll rate over speed. */
    double roll(double[] state, String setUp) {
        Own own = of(setUp);
        return error(state, own.errors.roll(), roll, own, Own::roll);
    }

    /** Logarithm of a pack's true weight over the weight told, as a factor of the state. */
    public int weight(String pack) {
        return factors.place(new Factor("weight with " + pack, 0, WEIGHT, false));
    }

    /** How far a pack's balance point lies behind the one told, m, as a factor of the state. */
    public int balance(String pack) {
        return factors.place(new Factor("balance with " + pack, 0, BALANCE, false));
    }

    /** One set-up with one pack. */
    public Flying flying(String setUp, String pack, SetUpFlight predicted) {
        return new Flying(this, setUp, predicted, weight(pack), balance(pack));
    }
}
