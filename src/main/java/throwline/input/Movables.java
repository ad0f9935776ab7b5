package throwline.input;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import throwline.model.Elevator;
import throwline.model.Hinge;

/** The surfaces of a file and its elevator, by name. */
final class Movables {

    private final Map<String, Movable> byName = new LinkedHashMap<>();

    Movables(Branch root) {
        Branch wing = root.child("wing");
        for (Branch surface : wing.child("surfaces").children()) {
            OptionalDouble share = surface.child("chord").amount();
            OptionalDouble chord =
                    chordAt(wing.child("sections"), surface.child("from").amount());
            add(new Movable(surface.name(), product(share, chord), both(surface.child("travel"))));
        }
        Branch tail = root.child("tail");
        Branch elevator = tail.child("elevator");
        add(new Movable(
                Movable.ELEVATOR,
                product(behindHinge(elevator), tail.child("chord").amount()),
                both(elevator.child("travel"))));
    }

    /** Share of the tail's chord on which throws are measured. */
    private static OptionalDouble behindHinge(Branch elevator) {
        OptionalDouble chord = elevator.child("chord").amount();
        if (chord.isEmpty()) {
            return chord;
        }
        double pivot = elevator.child("pivot").amount().orElse(Elevator.USUAL_PIVOT);
        return OptionalDouble.of(new Elevator(chord.getAsDouble(), 0, 0, Hinge.TAPED, pivot).throwFraction());
    }

    private void add(Movable movable) {
        byName.putIfAbsent(NearestName.key(movable.name()), movable);
    }

    Optional<Movable> find(String name) {
        return Optional.ofNullable(byName.get(NearestName.key(name)));
    }

    List<String> names() {
        return byName.values().stream().map(Movable::name).toList();
    }

    /** Travel or throws: one size for both ways, or two. */
    static Optional<WrittenDeflection.Both> both(Branch branch) {
        return branch.value(WrittenDeflection.Both.class)
                .or(() -> branch.value(WrittenDeflection.class)
                        .filter(d -> d.sense() == WrittenDeflection.Sense.UNSAID)
                        .map(d -> new WrittenDeflection.Both(d, d)));
    }

    private static OptionalDouble product(OptionalDouble a, OptionalDouble b) {
        return a.isPresent() && b.isPresent()
                ? OptionalDouble.of(a.getAsDouble() * b.getAsDouble())
                : OptionalDouble.empty();
    }

    private static OptionalDouble chordAt(Branch sections, OptionalDouble at) {
        if (at.isEmpty()) {
            return at;
        }
        List<Branch> stations = List.copyOf(sections.children());
        for (int i = 1; i < stations.size(); i++) {
            OptionalDouble y0 = stations.get(i - 1).child("at").amount();
            OptionalDouble y1 = stations.get(i).child("at").amount();
            OptionalDouble c0 = stations.get(i - 1).child("chord").amount();
            OptionalDouble c1 = stations.get(i).child("chord").amount();
            if (y0.isEmpty() || y1.isEmpty() || c0.isEmpty() || c1.isEmpty()) {
                return OptionalDouble.empty();
            }
            double t = (at.getAsDouble() - y0.getAsDouble()) / (y1.getAsDouble() - y0.getAsDouble());
            if (t >= 0 && t <= 1) {
                return OptionalDouble.of(c0.getAsDouble() + t * (c1.getAsDouble() - c0.getAsDouble()));
            }
        }
        return OptionalDouble.empty();
    }
}
