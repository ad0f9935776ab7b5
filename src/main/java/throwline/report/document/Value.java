package throwline.report.document;

import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.units.Dimension;
import throwline.units.Quantity;

/** A value in SI units and radians, with what it is; how many digits it is worth and in which unit it is read is not its job. */
public sealed interface Value extends Text {

    /** What a number is, and so how it is read. */
    enum Kind {
        /** Airspeed, wind or gust, m/s. */
        SPEED,
        /** A speed in the unit that stands beside the first, m/s. */
        OTHER_SPEED,
        /** A small difference of speeds without its sign, m/s. */
        SPEED_STEP,
        /** An angle, rad. */
        ANGLE,
        /** An angle of which a tenth of a degree tells one answer from the next, rad. */
        ANGLE_TENTHS,
        /** A small difference of angles without its sign, rad. */
        ANGLE_STEP,
        /** A deflection, rad, trailing edge down positive, read as up or down. */
        DEFLECTION,
        /** The same to a tenth of a degree. */
        DEFLECTION_TENTHS,
        /** A rate of roll, rad/s. */
        RATE,
        /** A small difference of rates, rad/s. */
        RATE_STEP,
        /** A length of the field, m. */
        DISTANCE,
        /** A radius that is compared with another, m. */
        RADIUS,
        /** A way forward for each height, 1 for the height itself: for 10 m, or 30 ft. */
        GLIDE,
        /** A speed up or down, m/s, whatever unit airspeeds are shown in. */
        VERTICAL_SPEED,
        /** A height near the ground, m. */
        HEIGHT,
        /** A place on the chord that is known to some 5 mm, m. */
        PLACE,
        /** Lift over weight. */
        LOAD,
        /** A time, s. */
        TIME,
        /** A share of the whole, 1 for all of it. */
        SHARE,
        /** A share of the whole with a decimal where there is one. */
        LEVER,
        /** A ratio. */
        RATIO,
        /** A share of the whole to a tenth of a per cent. */
        SHARE_TENTHS,
        /** The same with its sign. */
        SIGNED_SHARE,
        /** A difference of angles with its sign, rad. */
        SIGNED_ANGLE;

        /** Of a headline number. */
        public static Kind of(FlightQuantity quantity) {
            return switch (quantity.dimension()) {
                case SPEED ->
                    switch (quantity) {
                        case SINK_RATE, GUST_LIMIT, CLIMB_RATE -> VERTICAL_SPEED;
                        default -> SPEED;
                    };
                case ANGLE -> ANGLE;
                case ANGULAR_RATE -> RATE;
                case LENGTH -> quantity == FlightQuantity.FLARE_HEIGHT ? HEIGHT : DISTANCE;
                case FRACTION -> SHARE;
                case TIME -> TIME;
                default -> RATIO;
            };
        }
    }

    /** A number of some kind, in SI units. */
    record Amount(double value, Kind kind) implements Value {}

    /** The band of a number, without a unit, as it stands below the number. */
    record Band(Headline.Known number, Kind kind) implements Value {}

    /**
     * A deflection as it is measured with a gauge: the straight distance at the trailing edge.
     *
     * @param angle rad, trailing edge down positive
     * @param chord behind the hinge where it is measured, m
     */
    record Edge(double angle, double chord) implements Value {}

    /**
     * The band of a deflection at the trailing edge, without a unit.
     *
     * @param angle rad, trailing edge down positive
     * @param chord behind the hinge where it is measured, m
     */
    record EdgeBand(Headline.Known angle, double chord) implements Value {}

    /**
     * A deflection as it is set on the bench: the straight distance at the trailing edge, to a tenth of a millimetre.
     *
     * @param angle rad, trailing edge down positive
     * @param chord behind the hinge where it is measured, m
     * @param form how much of it is said
     */
    record Gauge(double angle, double chord, Form form) implements Value {
        /** How much is said. */
        public enum Form {
            /** The distance alone. */
            SIZE,
            /** And up or down. */
            SENSE,
            /** With its unit as well. */
            WHOLE
        }
    }

    /** An airspeed without its unit, m/s. */
    record BareSpeed(double speed) implements Value {}

    /**
     * A difference with its sign and without a unit, as it stands beside the number that it belongs to.
     *
     * @param value the number less the one that it is compared with
     * @param kind of the number
     */
    record Change(double value, Kind kind) implements Value {}

    /** A quantity in the unit that its reader asked for, as a model file has it. */
    record Measure(Quantity quantity) implements Value {}

    /** A plain number with so many decimals. */
    record Plain(double value, int decimals) implements Value {}

    /** A plain number with four figures or so; nothing for an open end. */
    record Rounded(double value) implements Value {}

    /** The symbol of the unit for lengths of the model. */
    record LengthUnit() implements Value {}

    /** The symbol of the unit for airspeeds. */
    record SpeedUnit() implements Value {}

    /** A number of some kind. */
    static Value of(double value, Kind kind) {
        return new Amount(value, kind);
    }

    /** An airspeed, m/s. */
    static Value speed(double speed) {
        return new Amount(speed, Kind.SPEED);
    }

    /** An angle, rad. */
    static Value angle(double angle) {
        return new Amount(angle, Kind.ANGLE);
    }

    /** A deflection, rad, trailing edge down positive. */
    static Value deflection(double angle) {
        return new Amount(angle, Kind.DEFLECTION);
    }

    /** A length of the field, m. */
    static Value distance(double distance) {
        return new Amount(distance, Kind.DISTANCE);
    }

    /** A time, s. */
    static Value time(double time) {
        return new Amount(time, Kind.TIME);
    }

    /** A share, 1 for the whole. */
    static Value share(double share) {
        return new Amount(share, Kind.SHARE);
    }

    /** A quantity as a model file has it. */
    static Value measure(double value, Dimension dimension) {
        return new Measure(new Quantity(value, dimension));
    }

    /** A whole number. */
    static Value count(long count) {
        return new Plain(count, 0);
    }
}
