package throwline.input;

import java.util.List;
import java.util.Optional;
import throwline.model.Assumption;
import throwline.model.CruiseTrim;
import throwline.words.Message;

/**
 * The keys that tell where the elevator stands in cruise. They count where the tail's incidence is not given and the flight
 * is known: by its speed, or by a motor that holds a level flight with the first battery.
 */
final class CruiseKeys {

    static final String TRIM = "cruise";
    static final String SPEED = "cruise speed";

    /** The key that counts instead. */
    static final String INCIDENCE = "tail.incidence";

    private final Branch root;
    private final Branch elevator;
    private final boolean incidenceGiven;

    /**
     * @param root of the file
     * @param assumed what the file does not give
     */
    CruiseKeys(Branch root, List<Assumption> assumed) {
        this.root = root;
        elevator = root.child("tail").child("elevator");
        incidenceGiven = assumed.stream().noneMatch(a -> a.path().equals(INCIDENCE));
    }

    /** True where the incidence of the tail is given. */
    boolean isIncidenceGiven() {
        return incidenceGiven;
    }

    /** True where the incidence of the tail is to be worked out. */
    boolean isUsed() {
        return elevator.has(TRIM) && !incidenceGiven && isFlightKnown();
    }

    private boolean isFlightKnown() {
        Branch bench = root.child("bench");
        boolean motor =
                root.child("motor").has("kv") || bench.has("power") || (bench.has("voltage") && bench.has("current"));
        boolean battery = root.child("packs").children().stream()
                .findFirst()
                .filter(pack -> pack.has("cells"))
                .isPresent();
        return elevator.has(SPEED) || (motor && battery && root.has("propeller"));
    }

    /** What was read, where it counts. */
    Optional<CruiseTrim> trim(Movables movables) {
        return isUsed()
                ? elevator.child(TRIM)
                        .value(WrittenDeflection.class)
                        .map(read -> new CruiseTrim(
                                movables.find(Movable.ELEVATOR)
                                        .orElseThrow()
                                        .signed(read)
                                        .orElseThrow(),
                                elevator.child(SPEED).amount()))
                : Optional.empty();
    }

    /** Why it does not count. */
    List<Message> notes() {
        if (!elevator.has(TRIM) || isUsed()) {
            return List.of();
        }
        return List.of(Message.of(incidenceGiven ? "note.cruise-trim.given" : "note.cruise-trim.no-speed"));
    }

    /** A speed belongs to a trim, and a trim has its way. */
    static void check(Branch root, Problems problems) {
        Branch elevator = root.child("tail").child("elevator");
        if (elevator.has(SPEED) && !elevator.has(TRIM)) {
            problems.add(elevator.child(SPEED), "input.cruise-trim.speed");
        }
        boolean noWay = elevator.child(TRIM)
                .value(WrittenDeflection.class)
                .filter(read -> read.sense() == WrittenDeflection.Sense.UNSAID && read.size() > 0)
                .isPresent();
        if (noWay) {
            problems.add(elevator.child(TRIM), "input.cruise-trim.way");
        }
    }
}
