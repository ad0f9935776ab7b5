package throwline.logs;

import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * Logs of flights that nobody flew: an aeroplane with a known stall, sink, elevator and roll in wind, gusts and moving air,
 * through sensors with noise, lag and drift (all sizes PRACTICE). Its wind and truth are kept for the tests.
 */
public final class SyntheticLog {

    /** What is flown. */
    public interface Aeroplane {

        double stallSpeed(String setUp);

        double descentAngle(String setUp, double speed);

        double elevator(String setUp, double speed);

        double rollRate(String setUp, double speed);
    }

    /**
     * How it is written down.
     *
     * @param rate rows a second
     * @param sensor true with an airspeed sensor
     * @param scale what it shows over the airspeed
     * @param lag of the receiver, s
     * @param gaps true where it loses two seconds now and then
     * @param first what is flown first, to tell the wind
     * @param fault what goes wrong in the whole of it
     */
    public record Setting(
            double rate, boolean sensor, double scale, double lag, boolean gaps, First first, Fault fault) {

        public static final Setting USUAL = new Setting(5, true, 1, 0.4, false, First.CIRCLES, Fault.NONE);
        public static final Setting GPS_ONLY = new Setting(5, false, 1, 0.4, false, First.CIRCLES, Fault.NONE);
    }

    /** What is flown for the wind alone. */
    public enum First {
        /** Two circles. */
        CIRCLES,
        /** Three straight legs, a third of a turn apart. */
        THREE_HEADINGS,
        /** Nothing. */
        NOTHING
    }

    /** What goes wrong. */
    public enum Fault {
        /** Nothing. */
        NONE(1, 1, 0),
        /** Every stall is broken off early: at 1.18 times its speed. */
        STALLS_BROKEN_OFF(1, 1.18, 0),
        /** Every stall of a log is broken off at the same share above it, anywhere up to 30 %. */
        STALLS_BROKEN_OFF_ANYWHERE(1, 1.3, 0),
        /** One stall in three, by chance, is broken off at 1.18 times its speed. */
        SOME_STALLS_BROKEN_OFF(1 / 3.0, 1.18, 0),
        /** The elevator's channel is 8 degrees off, either way. */
        ELEVATOR_OFF(1, 1, 8),
        /** The same by 3 degrees. */
        ELEVATOR_SLIGHTLY_OFF(1, 1, 3);

        private final double share;
        private final double reached;
        private final double off;

        Fault(double share, double reached, double off) {
            this.share = share;
            this.reached = reached;
            this.off = Math.toRadians(off);
        }

        /** Whether it is one of stalls. */
        public boolean ofStalls() {
            return reached > 1;
        }
    }

    private static final double G = 9.80665;
    private static final double DT = 0.05;
    private static final double FLOWN_AT = 1.3;

    private final Aeroplane aeroplane;
    private final Setting setting;
    private final RandomGenerator random;
    private final StringBuilder text = new StringBuilder();
    private final double windSpeed;
    private final double windTo;
    private double t;
    private double height = 1;
    private double speed = 13;
    private double heading;
    private double x;
    private double y;
    private double gustX;
    private double gustY;
    private double quick;
    private double slow;
    private double wander;
    private double drift;
    private double positionX;
    private double positionY;
    private double seenX;
    private double seenY;
    private double seenHeight = 1;
    private double nextRow;
    private final double staticError;
    private final double zero;
    private final double brokenOffAt;
    private final double gyroScale;

    public SyntheticLog(Aeroplane aeroplane, Setting setting, long seed) {
        this.aeroplane = aeroplane;
        this.setting = setting;
        random = new Well19937c(seed);
        windSpeed = 4 * random.nextDouble();
        windTo = 0.4 * random.nextGaussian();
        staticError = 0.1 * random.nextGaussian();
        double usual = Math.toRadians(0.5) * random.nextGaussian();
        zero = Math.copySign(setting.fault.off, usual) + usual;
        gyroScale = 1 + 0.02 * random.nextGaussian();
        boolean anywhere = setting.fault == Fault.STALLS_BROKEN_OFF_ANYWHERE;
        brokenOffAt = anywhere ? 1 + (setting.fault.reached - 1) * random.nextDouble() : setting.fault.reached;
        text.append("# Invented: nobody flew this.\n");
        text.append("seconds,height baro m,ground speed m/s,course deg,latitude,longitude,");
        text.append(setting.sensor ? "airspeed m/s," : "");
        text.append("throttle %,elevator deg,aileron %,switch,roll deg/s\n");
        slow = 0.15 * random.nextGaussian();
    }

    /** Wind at 10 m, m/s. */
    public double windSpeed() {
        return windSpeed;
    }

    /** Eastward and northward wind at a height. */
    public double[] wind(double above) {
        double w = windSpeed * Math.pow(Math.max(1, above) / 10, 0.15);
        return new double[] {w * Math.sin(windTo), w * Math.cos(windTo)};
    }

    /** Flies: a climb, two circles, and for each set-up four glides, three stalls and two rolls. */
    public String fly(List<String> setUps) {
        motor(10, 13, 0, 5);
        if (setting.first == First.CIRCLES) {
            motor(2 * 2 * Math.PI * 30 / 13, 13, 13.0 / 30, 0);
        } else if (setting.first == First.THREE_HEADINGS) {
            for (int leg = 0; leg < 3; leg++) {
                into(leg * 2 * Math.PI / 3);
                motor(12, 13, 0, 0);
            }
        }
        for (int s = 0; s < setUps.size(); s++) {
            String setUp = setUps.get(s);
            double approach = FLOWN_AT * aeroplane.stallSpeed(setUp);
            for (int i = 0; i < 4; i++) {
                up(s, approach);
                into(windTo + Math.PI * (i + 1));
                glide(s, setUp, 13, approach * (0.95 + 0.1 * random.nextDouble()));
            }
            for (int i = 0; i < 3; i++) {
                up(s, approach);
                into(windTo + Math.PI * (i + 1));
                stall(s, setUp, approach);
            }
            for (int i = 0; i < 2; i++) {
                up(s, approach);
                roll(s, setUp, approach);
            }
        }
        return text.toString();
    }

    private void up(int setUp, double approach) {
        motor(Math.max(1, (90 - height) / 5), approach, 0, height < 90 ? 5 : 0, setUp);
    }

    private void into(double wanted) {
        double turn = Math.IEEEremainder(wanted - heading, 2 * Math.PI);
        motor(5, speed, turn / 5, 0);
    }

    private void motor(double seconds, double target, double turn, double climb) {
        motor(seconds, target, turn, climb, 0);
    }

    private void motor(double seconds, double target, double turn, double climb, int setUp) {
        for (double end = t + seconds; t < end; ) {
            double faster = Math.max(-1, Math.min(1, (target - speed) / 0.5));
            step(faster, turn, climb, new Controls(60, setUp, 0, 0, 0));
        }
    }

    private record Controls(double throttle, int setUp, double stick, double elevator, double roll) {}

    private void glide(int place, String setUp, double seconds, double target) {
        double smooth = 0;
        double before = 0;
        for (double end = t + seconds; t < end; ) {
            wander = markov(wander, 0.45, 4);
            smooth += (wander - smooth) * DT / 0.6;
            double faster = (smooth - before) / DT + Math.max(-1, Math.min(1, target + before - speed));
            before = smooth;
            sink(place, setUp, faster);
        }
    }

    private void sink(int place, String setUp, double faster) {
        double angle = aeroplane.descentAngle(setUp, speed);
        double climb = -speed * Math.sin(angle) - speed * faster / G;
        double elevator = aeroplane.elevator(setUp, speed) + Math.toRadians(0.7) * random.nextGaussian();
        step(faster, 0, climb, new Controls(0, place, 0, elevator, 0));
    }

    private void stall(int place, String setUp, double approach) {
        boolean always = setting.fault.share == 1;
        double reached = always || random.nextDouble() < setting.fault.share ? brokenOffAt : 1;
        double bottom = reached * aeroplane.stallSpeed(setUp) * (1 + 0.02 * random.nextGaussian());
        double slowing = 0.4 + 0.5 * random.nextDouble();
        for (double end = t + 3.5; t < end; ) {
            sink(place, setUp, Math.max(-1, Math.min(1, approach - speed)));
        }
        while (speed > bottom) {
            sink(place, setUp, -slowing);
        }
        for (double end = t + 1.8; t < end; ) {
            sink(place, setUp, 2.2);
        }
    }

    private void roll(int place, String setUp, double approach) {
        double rate = aeroplane.rollRate(setUp, approach);
        double now = 0;
        for (double end = t + 2; t < end; ) {
            now += (rate - now) * DT / 0.1;
            step(0, 0, 0, new Controls(60, place, 100, 0, now));
        }
    }

    private double markov(double value, double sd, double seconds) {
        double kept = Math.exp(-DT / seconds);
        return kept * value + sd * Math.sqrt(1 - kept * kept) * random.nextGaussian();
    }

    private void step(double faster, double turn, double climb, Controls controls) {
        double sd = 0.1 + 0.12 * windSpeed;
        gustX = markov(gustX, sd, 8);
        gustY = markov(gustY, sd, 8);
        quick = markov(quick, 0.25, 4);
        slow = markov(slow, 0.15, 30);
        drift = markov(drift, 0.5, 60);
        positionX = markov(positionX, 1.5, 60);
        positionY = markov(positionY, 1.5, 60);
        speed += faster * DT;
        heading += turn * DT;
        double air = controls.throttle == 0 ? quick + slow : 0;
        height = Math.max(1, height + (climb + air) * DT);
        double[] wind = wind(height);
        double level = controls.throttle == 0 ? Math.sqrt(Math.max(0, speed * speed - climb * climb)) : speed;
        double vx = level * Math.sin(heading) + wind[0] + gustX;
        double vy = level * Math.cos(heading) + wind[1] + gustY;
        x += vx * DT;
        y += vy * DT;
        seenX += setting.lag > 0 ? (vx - seenX) * DT / setting.lag : vx - seenX;
        seenY += setting.lag > 0 ? (vy - seenY) * DT / setting.lag : vy - seenY;
        seenHeight += (height - seenHeight) * DT / 0.2;
        t += DT;
        if (t >= nextRow) {
            nextRow += 1 / setting.rate;
            boolean lost = setting.gaps && t % 47 < 2;
            if (!lost) {
                row(controls);
            }
        }
    }

    private void row(Controls controls) {
        double vx = seenX + 0.2 * random.nextGaussian();
        double vy = seenY + 0.2 * random.nextGaussian();
        double shown = seenHeight + staticError * speed * speed / (2 * G) + drift + 0.25 * random.nextGaussian();
        double course = Math.toDegrees(Math.atan2(vx, vy));
        text.append(String.format(
                Locale.ROOT,
                "%.2f,%.1f,%.2f,%.1f,%.6f,%.6f,",
                t,
                shown,
                Math.hypot(vx, vy),
                course < 0 ? course + 360 : course,
                48 + (y + positionY) / 111_190.3,
                9 + (x + positionX) / 74_625.4));
        if (setting.sensor) {
            text.append(String.format(Locale.ROOT, "%.2f,", setting.scale * speed + 0.3 * random.nextGaussian()));
        }
        double gyro = gyroScale * Math.toDegrees(controls.roll) + 3 * random.nextGaussian();
        text.append(String.format(
                Locale.ROOT,
                "%.0f,%.2f,%.0f,%d,%.1f%n",
                controls.throttle,
                Math.toDegrees(controls.elevator + zero),
                controls.stick,
                controls.setUp,
                gyro));
    }
}
