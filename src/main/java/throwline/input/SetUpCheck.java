package throwline.input;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import throwline.units.QuantityPrinter;
import throwline.units.Unit;
import throwline.words.Message;

/** Holds set-ups, sticks and servos against the surfaces that the model has. */
final class SetUpCheck {

    /** Key of the switch that brings in a set-up. */
    static final String SWITCH = "switch";

    /** Throws that were rounded when they were written down are not beyond the travel. */
    private static final double ROUNDING = Math.toRadians(0.05);

    private final Branch root;
    private final Movables movables;
    private final Problems problems;

    SetUpCheck(Branch root, Movables movables, Problems problems) {
        this.root = root;
        this.movables = movables;
        this.problems = problems;
    }

    void check() {
        if (root.has("packs") && root.child("packs").children().isEmpty()) {
            problems.add(root.child("packs"), "input.packs.one");
        }
        if (root.has("set-ups") && root.child("set-ups").children().size() < 2) {
            problems.add(root.child("set-ups"), "input.setups.two");
        }
        for (Branch surface : root.child("wing").child("surfaces").children()) {
            movables.find(surface.name()).ifPresent(m -> travel(m, surface.child("travel")));
        }
        movables.find(Movable.ELEVATOR).ifPresent(m -> {
            travel(m, root.child("tail").child("elevator").child("travel"));
            steady(m, root.child("tail").child("elevator").child(CruiseKeys.TRIM));
        });
        CruiseKeys.check(root, problems);
        for (Branch setUp : root.child("set-ups").children()) {
            for (Branch where : setUp.children()) {
                if (!where.name().equals(SWITCH)) {
                    known(where).ifPresent(m -> steady(m, where));
                }
            }
        }
        root.child("sticks").children().forEach(this::stick);
        for (Branch servo : root.child("servos").children()) {
            known(servo);
            rod(servo);
        }
    }

    /** A rod must reach from arm to horn. */
    private void rod(Branch servo) {
        OptionalDouble arm = servo.child("arm").amount();
        OptionalDouble horn = servo.child("horn").amount();
        OptionalDouble rod = servo.child("rod").amount();
        if (arm.isPresent() && horn.isPresent() && rod.isPresent()) {
            double least = Math.max(arm.getAsDouble(), horn.getAsDouble());
            if (rod.getAsDouble() <= least) {
                problems.add(servo.child("rod"), "input.servo.rod", QuantityPrinter.print(least, Unit.MILLIMETRE));
            }
        }
    }

    private void travel(Movable movable, Branch where) {
        if (where.isAbsent()) {
            return;
        }
        Optional<WrittenDeflection.Both> both = Movables.both(where);
        if (both.isEmpty()) {
            problems.add(where, "input.throws", "{up: 25 deg, down: 18 deg}");
            return;
        }
        reachable(movable, where, both.get().up(), true);
        reachable(movable, where, both.get().down(), false);
    }

    private void stick(Branch stick) {
        Optional<String> does = stick.child("does").value(String.class);
        List<Branch> moved = stick.children().stream()
                .filter(b -> !b.name().equals("does") && !b.name().equals("in"))
                .toList();
        if (moved.isEmpty()) {
            problems.add(stick, "input.stick.nothing", names());
        }
        for (Branch where : moved) {
            Optional<Movable> movable = known(where);
            if (movable.isEmpty() || does.isEmpty()) {
                continue;
            }
            if (does.get().equals("roll")) {
                roll(movable.get(), where, stick);
            } else {
                pull(movable.get(), where, stick);
            }
        }
        List<String> setUps =
                root.child("set-ups").children().stream().map(Branch::name).toList();
        for (Branch in : stick.child("in").names()) {
            if (!root.child("set-ups").has(in.name())) {
                unknown(in, "input.stick.setup", setUps);
            }
        }
    }

    private void roll(Movable movable, Branch where, Branch stick) {
        if (movable.isElevator()) {
            problems.add(where, "input.stick.elevator");
            return;
        }
        Optional<WrittenDeflection.Both> both = Movables.both(where);
        if (both.isPresent()) {
            added(movable, where, both.get().up(), true, stick);
            added(movable, where, both.get().down(), false, stick);
        } else if (!where.isAbsent()) {
            problems.add(where, "input.stick.roll", "{up: 12 deg, down: 10 deg}");
        }
    }

    private void pull(Movable movable, Branch where, Branch stick) {
        Optional<WrittenDeflection> deflection = where.value(WrittenDeflection.class);
        if (where.value(WrittenDeflection.Both.class).isPresent()) {
            problems.add(where, "input.stick.pull");
        } else if (movable.isElevator()
                && deflection
                        .filter(d -> d.sense() != WrittenDeflection.Sense.UP && d.size() > 0)
                        .isPresent()) {
            problems.add(where, "input.stick.down");
        } else {
            deflection.ifPresent(d -> added(movable, where, d, d.sense() == WrittenDeflection.Sense.UP, stick));
        }
    }

    private void steady(Movable movable, Branch where) {
        Optional<WrittenDeflection> deflection = where.value(WrittenDeflection.class);
        if (deflection.isEmpty()) {
            return;
        }
        boolean up = deflection.get().sense() == WrittenDeflection.Sense.UP;
        OptionalDouble size = reachable(movable, where, deflection.get(), up);
        OptionalDouble travel = up ? movable.travelUp() : movable.travelDown();
        if (beyond(size, travel, 0)) {
            problems.add(where, "input.throw.travel", way(size, up), movable.name(), way(travel, up));
        }
    }

    /** What a stick adds may be cut at the stop in some set-ups, but not in each of them. */
    private void added(Movable movable, Branch where, WrittenDeflection deflection, boolean up, Branch stick) {
        OptionalDouble size = reachable(movable, where, deflection, up);
        OptionalDouble travel = up ? movable.travelUp() : movable.travelDown();
        List<Branch> setUps = root.child("set-ups").children().stream()
                .filter(s -> !stick.has("in") || stick.child("in").has(s.name()))
                .toList();
        if (!setUps.isEmpty() && setUps.stream().allMatch(s -> beyond(size, travel, standing(movable, s, up)))) {
            problems.add(where, "input.throw.never", way(size, up), movable.name(), way(travel, up));
        }
    }

    /** Where a surface stands in a set-up, rad, positive the given way. */
    private static double standing(Movable movable, Branch setUp, boolean up) {
        double angle = setUp.child(movable.name())
                .value(WrittenDeflection.class)
                .map(movable::signed)
                .orElse(OptionalDouble.empty())
                .orElse(0);
        return up ? -angle : angle;
    }

    private static boolean beyond(OptionalDouble size, OptionalDouble travel, double from) {
        return size.isPresent() && travel.isPresent() && from + size.getAsDouble() > travel.getAsDouble() + ROUNDING;
    }

    private static String way(OptionalDouble angle, boolean up) {
        return degrees(angle.orElseThrow()) + (up ? " up" : " down");
    }

    /** The size of a deflection; empty, and a problem, where no surface goes so far. */
    private OptionalDouble reachable(Movable movable, Branch where, WrittenDeflection deflection, boolean up) {
        OptionalDouble size = movable.size(deflection);
        double most = up ? Movable.MOST_UP : movable.mostDown();
        if (size.isPresent() && size.getAsDouble() <= most + ROUNDING) {
            return size;
        }
        if (size.isPresent()) {
            problems.add(where, "input.throw.most", way(size, up), way(OptionalDouble.of(most), up));
        } else if (movable.chord().isPresent()) {
            problems.add(
                    where,
                    "input.throw.chord",
                    QuantityPrinter.print(deflection.size(), Unit.MILLIMETRE),
                    QuantityPrinter.print(movable.chord().getAsDouble(), Unit.MILLIMETRE));
        }
        return OptionalDouble.empty();
    }

    private Optional<Movable> known(Branch where) {
        Optional<Movable> movable = movables.find(where.name());
        if (movable.isEmpty()) {
            unknown(where, "input.surface.unknown", movables.names());
        }
        return movable;
    }

    private void unknown(Branch where, String code, List<String> known) {
        String all = known.stream().collect(Collectors.joining(", "));
        Message note = NearestName.of(where.name(), known)
                .map(near -> Message.of(code + ".near", where.name(), near, all))
                .orElseGet(() -> Message.of(code, where.name(), all));
        problems.add(where.keyPlace(), where.path(), note);
    }

    private String names() {
        return movables.names().stream().collect(Collectors.joining(", "));
    }

    private static String degrees(double angle) {
        return QuantityPrinter.print(angle, Unit.DEGREE);
    }
}
