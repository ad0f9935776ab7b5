package throwline.logs;

import java.util.Optional;

/**
 * Piece of a log that was found, used or rejected.
 *
 * @param number counted from 1 in the order of time
 * @param kind what was found
 * @param from s
 * @param to s
 * @param setUp flown; empty where it does not matter
 * @param speed through the air, m/s; not a number where unknown
 * @param value sink rate, m/s, of a glide; roll rate, rad/s, of a roll; speed of a stall or circle, m/s
 * @param elevator mean, rad; not a number where unknown
 * @param east mean of the heading's unit vector, eastward
 * @param north the same, northward
 * @param reason why it was taken or rejected
 */
public record Piece(
        int number,
        Kind kind,
        double from,
        double to,
        String setUp,
        double speed,
        double value,
        double elevator,
        double east,
        double north,
        Reason reason) {

    /** Kinds of pieces. */
    public enum Kind {
        /** Turning over the ground at a constant airspeed. */
        CIRCLE,
        /** Straight and steady with a closed throttle. */
        GLIDE,
        /** Slowed down until the nose dropped. */
        STALL,
        /** Full aileron. */
        ROLL
    }

    /** Reasons for taking or rejecting a piece. */
    public enum Reason {
        /** A circle of at least one and a half turns. */
        TURNS(true),
        /** Steady for long enough. */
        STEADY(true),
        /** Slowed down evenly, and then the nose dropped. */
        BREAK(true),
        /** Full stick and a steady rate. */
        FULL_STICK(true),
        /** Shorter than the noise allows. */
        TOO_SHORT(false),
        /** Turned meanwhile. */
        TURNING(false),
        /** Speed changed too much. */
        UNSTEADY(false),
        /** Slowed down, and nothing broke: slowest seen, not a stall. */
        NO_BREAK(false),
        /** Much faster than the lowest one of its set-up. */
        BROKEN_OFF(false),
        /** Slowed down faster than a stall speed can be read. */
        TOO_QUICK(false),
        /** The log is slower than two rows a second. */
        TOO_SLOW_A_LOG(false),
        /** Speeds come from positions alone. */
        POSITIONS_ONLY(false),
        /** Nothing tells the wind, so ground speed is no airspeed. */
        NO_WIND(false),
        /** Nothing tells which set-up was flown. */
        NO_SET_UP(false),
        /** Less than a turn and a half. */
        FEW_TURNS(false),
        /** Speeds do not lie on a circle. */
        NO_CIRCLE(false),
        /** No rate gyro. */
        NO_GYRO(false),
        /** Struck out by the person. */
        STRUCK_OUT(false),
        /** No height in the log. */
        NO_HEIGHT(false);

        private final boolean good;

        Reason(boolean good) {
            this.good = good;
        }

        /** Whether the piece is used. */
        public boolean isGood() {
            return good;
        }
    }

    /** Whether it is used. */
    public boolean used() {
        return reason.isGood();
    }

    /** Length, s. */
    public double length() {
        return to - from;
    }

    Piece numbered(int place) {
        return new Piece(place, kind, from, to, setUp, speed, value, elevator, east, north, reason);
    }

    Piece because(Reason other) {
        return new Piece(number, kind, from, to, setUp, speed, value, elevator, east, north, other);
    }

    /** A piece without numbers. */
    static Piece rejected(Kind kind, double from, double to, Optional<String> setUp, Reason reason) {
        double none = Double.NaN;
        return new Piece(0, kind, from, to, setUp.orElse(""), none, none, none, 0, 0, reason);
    }
}
