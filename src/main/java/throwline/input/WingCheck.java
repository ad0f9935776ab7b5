package throwline.input;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import throwline.model.Wing;
import throwline.units.QuantityPrinter;
import throwline.units.Unit;

/** Relations between the measures of an aeroplane that no single value can show. */
final class WingCheck {

    private static final Set<String> RESERVED = Set.of(Movable.ELEVATOR, SetUpCheck.SWITCH, "does", "in");

    private final Branch root;
    private final Problems problems;

    WingCheck(Branch root, Problems problems) {
        this.root = root;
        this.problems = problems;
    }

    void check() {
        boolean ordered =
                sections(List.copyOf(root.child("wing").child("sections").children()));
        if (ordered) {
            sweep(List.copyOf(root.child("wing").child("sections").children()));
        }
        surfaces(root.child("wing").child("surfaces"), ordered);
        balance();
        tail();
        pivot(root.child("tail").child("elevator"));
    }

    /** Only a tail that moves as a whole has a pivot. */
    private void pivot(Branch elevator) {
        OptionalDouble chord = elevator.child("chord").amount();
        if (elevator.has("pivot") && chord.isPresent() && chord.getAsDouble() < 1) {
            problems.add(
                    elevator.child("pivot"),
                    "input.tail.pivot",
                    QuantityPrinter.print(chord.getAsDouble(), Unit.PER_CENT));
        }
    }

    /** True where the stations run from the middle to the tip. */
    private boolean sections(List<Branch> sections) {
        if (sections.isEmpty()) {
            return false;
        }
        boolean ordered = true;
        if (sections.size() < 2) {
            problems.add(root.child("wing").child("sections"), "input.sections.two");
        }
        OptionalDouble first = sections.get(0).child("at").amount();
        if (first.isPresent() && first.getAsDouble() != 0) {
            problems.add(sections.get(0).child("at"), "input.sections.middle");
        }
        for (int i = 1; i < sections.size(); i++) {
            OptionalDouble inner = sections.get(i - 1).child("at").amount();
            OptionalDouble outer = sections.get(i).child("at").amount();
            if (inner.isPresent() && outer.isPresent() && outer.getAsDouble() <= inner.getAsDouble()) {
                problems.add(sections.get(i).child("at"), "input.sections.order", length(inner.getAsDouble()));
                ordered = false;
            }
        }
        for (String key : List.of("washout", "set back")) {
            OptionalDouble value = sections.get(0).child(key).amount();
            if (value.isPresent() && value.getAsDouble() != 0) {
                problems.add(sections.get(0).child(key), "input.sections.reference", key);
            }
        }
        if (!sections.get(0).has("airfoil")) {
            problems.add(sections.get(0), "input.sections.airfoil");
        }
        return ordered && sections.size() > 1;
    }

    /** Panels are swept by no more than the lifting line understands. */
    private void sweep(List<Branch> sections) {
        OptionalDouble middle = sections.get(0).child("chord").amount();
        OptionalDouble inner = OptionalDouble.of(0);
        for (int i = 1; i < sections.size(); i++) {
            OptionalDouble outer = quarterChord(sections.get(i), middle);
            OptionalDouble from = sections.get(i - 1).child("at").amount();
            OptionalDouble to = sections.get(i).child("at").amount();
            if (inner.isPresent() && outer.isPresent() && from.isPresent() && to.isPresent()) {
                double sweep =
                        Math.atan2(outer.getAsDouble() - inner.getAsDouble(), to.getAsDouble() - from.getAsDouble());
                if (Math.abs(sweep) > Wing.LARGEST_SWEEP) {
                    Branch place =
                            sections.get(i).has("set back") ? sections.get(i).child("set back") : sections.get(i);
                    String found = QuantityPrinter.print(Math.abs(sweep), Unit.DEGREE);
                    String allowed = QuantityPrinter.print(Wing.LARGEST_SWEEP, Unit.DEGREE);
                    problems.add(place, sweep > 0 ? "input.sweep.back" : "input.sweep.forward", found, allowed);
                }
            }
            inner = outer;
        }
    }

    /** Quarter chord of a station behind that at the middle; straight where the file does not say. */
    private static OptionalDouble quarterChord(Branch section, OptionalDouble middle) {
        OptionalDouble chord = section.child("chord").amount();
        OptionalDouble back = section.child("set back").amount();
        if (!section.has("set back")) {
            return OptionalDouble.of(0);
        }
        return chord.isPresent() && back.isPresent() && middle.isPresent()
                ? OptionalDouble.of(back.getAsDouble() + (chord.getAsDouble() - middle.getAsDouble()) / 4)
                : OptionalDouble.empty();
    }

    private void surfaces(Branch surfaces, boolean ordered) {
        List<Branch> placed = new ArrayList<>();
        for (Branch surface : surfaces.children()) {
            if (RESERVED.contains(NearestName.key(surface.name()))) {
                problems.add(surface, "input.surface.reserved", surface.name());
            }
            OptionalDouble from = surface.child("from").amount();
            OptionalDouble to = surface.child("to").amount();
            if (from.isEmpty() || to.isEmpty()) {
                continue;
            }
            if (to.getAsDouble() <= from.getAsDouble()) {
                problems.add(
                        surface.child("to"),
                        "input.surface.order",
                        length(from.getAsDouble()),
                        length(to.getAsDouble()));
            } else {
                placed.add(surface);
                if (ordered) {
                    leavesWing(surface, to.getAsDouble());
                }
            }
        }
        placed.sort(Comparator.comparingDouble(s -> s.amount("from")));
        for (int i = 1; i < placed.size(); i++) {
            Branch inner = placed.get(i - 1);
            Branch outer = placed.get(i);
            if (outer.amount("from") < inner.amount("to")) {
                problems.add(
                        outer.child("from"),
                        "input.surface.overlap",
                        outer.name(),
                        length(outer.amount("from")),
                        inner.name(),
                        length(inner.amount("to")));
            }
        }
    }

    private void leavesWing(Branch surface, double to) {
        List<Branch> sections = List.copyOf(root.child("wing").child("sections").children());
        OptionalDouble tip = sections.get(sections.size() - 1).child("at").amount();
        if (tip.isPresent() && to > tip.getAsDouble()) {
            problems.add(surface.child("to"), "input.surface.leaves", length(to), length(tip.getAsDouble()));
        }
    }

    private void balance() {
        OptionalDouble arm = root.child("tail").child("arm").amount();
        for (Branch pack : root.child("packs").children()) {
            OptionalDouble balance = pack.child("balance").amount();
            if (arm.isPresent() && balance.isPresent() && balance.getAsDouble() >= arm.getAsDouble()) {
                problems.add(
                        pack.child("balance"),
                        "input.balance.tail",
                        length(balance.getAsDouble()),
                        length(arm.getAsDouble()));
            }
        }
    }

    private void tail() {
        List<Branch> sections = List.copyOf(root.child("wing").child("sections").children());
        OptionalDouble arm = root.child("tail").child("arm").amount();
        OptionalDouble chord = sections.isEmpty()
                ? OptionalDouble.empty()
                : sections.get(0).child("chord").amount();
        if (arm.isPresent() && chord.isPresent() && arm.getAsDouble() < chord.getAsDouble()) {
            problems.add(
                    root.child("tail").child("arm"),
                    "input.tail.inside",
                    length(arm.getAsDouble()),
                    length(chord.getAsDouble()));
        }
    }

    private static String length(double metres) {
        return QuantityPrinter.print(metres, Unit.MILLIMETRE);
    }
}
