package throwline.study;

import java.util.List;
import java.util.Optional;
import throwline.correction.Doubt;
import throwline.units.Key;

/**
 * Lessons of the flights of a model, and its numbers after them.
 *
 * @param before the comparison before any flight
 * @param after the same with what was learnt
 * @param flights how many counted
 * @param measurements how many of their notes counted
 * @param lastDate date of the last flight that counted; empty where none was told
 * @param flown set-ups that were flown
 * @param doubts what contradicts the rest, the worst first
 * @param oneWay true where several contradict it in one direction
 * @param wider factor on all bands after, where the notes scatter more than expected
 * @param winds winds as told and as the flights have it
 * @param unused notes of which nothing is predicted, or all where no state fits them, so that they do not count yet
 * @param changed set-ups that stood otherwise on a day that was flown
 * @param next what to measure next
 * @param surprises rows that moved by more than their half-width
 * @param logs what was found in logs
 * @param measured what single measurements say of the numbers of the first pack
 */
public record Learnt(
        Comparison before,
        Comparison after,
        int flights,
        int measurements,
        String lastDate,
        List<String> flown,
        List<Doubt> doubts,
        boolean oneWay,
        double wider,
        List<WindFound> winds,
        List<String> unused,
        List<String> changed,
        List<Advice> next,
        List<String> surprises,
        List<LoggedDay> logs,
        List<Measured> measured) {

    public Learnt {
        flown = List.copyOf(flown);
        doubts = List.copyOf(doubts);
        winds = List.copyOf(winds);
        unused = List.copyOf(unused);
        changed = List.copyOf(changed);
        next = List.copyOf(next);
        surprises = List.copyOf(surprises);
        logs = List.copyOf(logs);
        measured = List.copyOf(measured);
    }

    /**
     * What one measurement alone would have a number of its set-up be.
     *
     * @param setUp flown
     * @param quantity stall speed, descent angle, elevator or roll rate
     * @param value the number
     * @param low one end of its own band
     * @param high the other
     * @param wrong true where it contradicts the rest
     * @param speed of a glide, m/s; not a number for others
     * @param sink of a glide as measured, m/s; not a number for others
     */
    public record Measured(
            String setUp,
            FlightQuantity quantity,
            double value,
            double low,
            double high,
            boolean wrong,
            double speed,
            double sink) {

        /** True for a glide that was timed, so that it has a speed and a sink rate. */
        public boolean glided() {
            return !Double.isNaN(speed) && sink > 0;
        }
    }

    /**
     * Wind of a day.
     *
     * @param day its name
     * @param told headwind told, or that of the model file, m/s
     * @param said true where it was told for that day
     * @param found headwind that fits the notes, m/s
     * @param sd standard deviation of that, m/s
     * @param toldSd standard deviation of what was told, m/s
     */
    public record WindFound(
            @Key("flight") String day,
            double told,
            @Key(Key.NONE) boolean said,
            double found,
            double sd,
            @Key(Key.NONE) double toldSd) {}

    /**
     * A measurement that would tell most.
     *
     * @param what kind of measurement: a code
     * @param setUp to be flown
     * @param stick for rolls; empty for others
     * @param quantity that it narrows
     * @param of set-up whose number that is
     * @param band half-width now: a share of the value, or rad
     * @param then half-width that it would leave
     * @param minutes effort
     */
    public record Advice(
            String what,
            String setUp,
            String stick,
            FlightQuantity quantity,
            String of,
            double band,
            double then,
            double minutes) {}

    /** The numbers of a set-up with a pack after the flights. */
    public Optional<SetUpResult> after(String pack, String setUp) {
        return after.packs().stream()
                .filter(p -> p.pack().name().equals(pack))
                .flatMap(p -> p.setUps().stream())
                .filter(r -> r.setUp().name().equals(setUp))
                .findFirst();
    }
}
