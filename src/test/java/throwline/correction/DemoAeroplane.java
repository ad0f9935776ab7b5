package throwline.correction;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import throwline.correction.SetUpErrors.Share;

/**
 * An invented aeroplane in closed form: parabolic drag, straight trim line. The numbers of the tests that use it were worked
 * out by an independent program (COMPUTED: Python with NumPy, same model, own code).
 */
final class DemoAeroplane {

    static final double RHO = 1.17;
    static final double MASS = 3.05;
    static final double AREA = 0.492;
    static final double INDUCED = 0.0617;
    static final double G = 9.80665;
    static final List<String> SET_UPS = List.of("clean", "take-off flap", "landing flap", "airbrake");
    private static final double[] MOST_LIFT = {1.26, 1.32, 1.41, 1.33};
    private static final double[] DRAG = {0.0545, 0.0700, 0.1028, 0.1813};
    private static final double[] ELEVATOR = {-3.57, -0.74, 1.44, 6.30};
    private static final double[] ROLL = {7.09, 6.99, 6.93, 5.48};
    private static final double STALL_BAND = 0.06;
    private static final double DESCENT_BAND = 0.26;
    private static final double ROLL_BAND = 0.2;

    static final double FLOATS = 20;

    final Factors factors = new Factors();
    final Aeroplane aeroplane = new Aeroplane(factors);
    final Map<String, Flying> small = new LinkedHashMap<>();

    DemoAeroplane() {
        for (int i = 0; i < SET_UPS.size(); i++) {
            double trim = Math.toRadians(Math.max(0.4 * Math.abs(ELEVATOR[i]), 2)) / RowBand.NINE_OF_TEN;
            aeroplane.add(
                    SET_UPS.get(i),
                    new SetUpErrors(
                            Share.of(2 * STALL_BAND / RowBand.NINE_OF_TEN, 0.9),
                            Share.of(DESCENT_BAND / RowBand.NINE_OF_TEN, 0.8),
                            Share.of(trim, 0.8),
                            Share.of(ROLL_BAND / RowBand.NINE_OF_TEN, 0.8)));
            small.put(SET_UPS.get(i), aeroplane.flying(SET_UPS.get(i), "small", new Flight(i)));
        }
    }

    Flying in(String setUp) {
        Flying flying = small.get(setUp);
        if (flying == null) {
            throw new IllegalArgumentException(setUp);
        }
        return flying;
    }

    /** Place of the logarithm of a speed that is known so exactly. */
    int speed(String name, double speed, double sd) {
        return factors.place(new Factor(name, Math.log(speed), sd, false));
    }

    private record Flight(int i) implements SetUpFlight {

        private static double weightCoefficient(double speed) {
            return MASS * G / (RHO * speed * speed * AREA / 2);
        }

        @Override
        public double stallSpeed() {
            return Math.sqrt(2 * MASS * G / (RHO * AREA * MOST_LIFT[i]));
        }

        @Override
        public double approachSpeed() {
            return 1.3 * stallSpeed();
        }

        @Override
        public double descentAngle(double speed, double drag) {
            double angle = 0.1;
            for (int step = 0; step < 6; step++) {
                double lift = weightCoefficient(speed) * Math.cos(angle);
                angle = Math.atan((DRAG[i] + INDUCED * lift * lift) * drag / lift);
            }
            return angle;
        }

        @Override
        public double floats() {
            return FLOATS;
        }

        @Override
        public double elevator(double speed) {
            return Math.toRadians(ELEVATOR[i] - 7.4 * (weightCoefficient(speed) - MOST_LIFT[i] / 1.69));
        }

        @Override
        public double elevatorPerBalance(double speed) {
            return Math.toRadians(0.24 * weightCoefficient(speed)) / 1e-3;
        }

        @Override
        public double rollPerSpeed(String stick) {
            return Math.toRadians(ROLL[i]);
        }
    }
}
