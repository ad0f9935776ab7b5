package throwline.sizing;

/** Limit that stops an answer from going further. */
public enum Limit {
    /** The flaps are as far down as they go. */
    FLAPS_DOWN,
    /** The flaps are as far up as they go. */
    FLAPS_UP,
    /** Further up, the ailerons would not have enough travel left to roll. */
    ROLL_RESERVE_UP,
    /** Further down, the ailerons would not have enough travel left to roll. */
    ROLL_RESERVE_DOWN,
    /** The ailerons are at the end of their travel. */
    AILERON_TRAVEL,
    /** The wing is at its stall. */
    WING_STALL,
    /** The tail has less angle left than is safe. */
    TAIL_MARGIN,
    /** The elevator's travel does not hold it. */
    ELEVATOR_TRAVEL,
    /** So much drag that the speed cannot be held even straight down. */
    TOO_MUCH_DRAG,
    /** At the wanted descent the stall speed is what it is. */
    STALL_GOES_WITH_ANGLE,
    /** More throw brings less. */
    BEST_REACHED,
    /** Flaps move no further than the ailerons they help. */
    AILERON_THROW,
    /** Full stick keeps so little angle before the wing stalls that no more is safe. */
    WING_MARGIN,
    /** The elevator goes all the way up already. */
    ELEVATOR_TRAVEL_USED,
    /** Flaps move no further than the elevator they help. */
    ELEVATOR_THROW,
    /** There are no flaps, and the ailerons go no further down. */
    NO_FLAPS,
    /** The throttle is full open. */
    FULL_THROTTLE,
    /** The flight calculation found no answer there. */
    NO_SOLUTION
}
