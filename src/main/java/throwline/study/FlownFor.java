package throwline.study;

import throwline.notes.Noticed;

/**
 * A set-up that was flown for something.
 *
 * @param setUp its name
 * @param topic what it was flown for
 * @param source name of what was measured
 */
record FlownFor(String setUp, Topic topic, String source) {

    /** What flights tell of. */
    enum Topic {
        STALL,
        GLIDE,
        TRIM,
        ROLL,
        FLOAT,
        OTHER
    }

    static FlownFor of(Noticed noticed) {
        Topic topic = noticed instanceof Noticed.Stall
                ? Topic.STALL
                : noticed instanceof Noticed.Glide
                        ? Topic.GLIDE
                        : noticed instanceof Noticed.Trim
                                ? Topic.TRIM
                                : noticed instanceof Noticed.Roll
                                        ? Topic.ROLL
                                        : noticed instanceof Noticed.Floated ? Topic.FLOAT : Topic.OTHER;
        return new FlownFor(noticed.setUp(), topic, noticed.told().source());
    }

    /** Whether it tells of a number. */
    boolean tellsOf(FlightQuantity quantity) {
        return switch (quantity) {
            case STALL_SPEED, APPROACH_SPEED, GUST_LIMIT -> topic == Topic.STALL;
            case ELEVATOR, ELEVATOR_CHANGE -> topic == Topic.TRIM;
            case ROLL_RATE -> topic == Topic.ROLL;
            case FLOAT -> topic == Topic.GLIDE || topic == Topic.FLOAT;
            default -> topic == Topic.GLIDE;
        };
    }
}
