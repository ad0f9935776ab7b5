package throwline.input;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import throwline.model.AirfoilName;
import throwline.model.Body;
import throwline.model.Field;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.Servo;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Tail;
import throwline.model.TailPosition;
import throwline.model.Wheels;
import throwline.model.Wing;
import throwline.units.Dimension;
import throwline.units.Display;
import throwline.units.Unit;

/** Builds the model from a file without problems; what the file leaves open is worked out and noted as assumed. */
final class ModelBuilder {

    /* Shares by which missing measures are guessed. Common practice, no source. */
    private static final double BODY_WIDTH_OF_LENGTH = 0.09;
    private static final double BODY_HEIGHT_OF_LENGTH = 0.10;
    private static final double FIN_OF_TAIL_SPAN = 0.35;
    private static final double WHEEL_WIDTH_OF_DIAMETER = 0.3;
    private static final double LEG_OF_BODY_HEIGHT = 1.1;
    /* Seen from the front, m. Common practice, no source. */
    private static final double SHEET_OR_WIRE_LEG = 0.004;
    private static final double FAIRED_LEG = 0.008;

    /* The standard atmosphere below 11 km (ISO 2533): sea level and fall with height. */
    /** Models have their wing set from about level to some degrees nose up against the tail (common practice, no source). */
    private static final double INCIDENCE_DOUBT = Math.toRadians(2);

    private static final double STANDARD_TEMPERATURE = 288.15;
    private static final double STANDARD_LAPSE = 0.0065;

    private final Branch root;
    private final Movables movables;
    private final String text;
    private final Display display;
    private final CruiseKeys cruise;
    private final Assumed assumed;
    private final List<String> order;

    ModelBuilder(Branch root, Movables movables, KeyCheck keys, List<Unit> shown, String text) {
        this.root = root;
        this.movables = movables;
        this.text = text;
        this.display = display(root, shown, text);
        this.cruise = new CruiseKeys(root, keys.assumed());
        this.assumed = new Assumed(
                keys.assumed().stream()
                        .filter(a -> !a.path().startsWith(KeyTable.FLIGHTS_KEY))
                        .filter(a -> !a.path().startsWith("motor.")
                                || !root.child("motor").isAbsent())
                        .filter(a -> !a.path().equals(CruiseKeys.INCIDENCE) || !cruise.isUsed())
                        .toList(),
                display);
        this.order = keys.order();
    }

    ReadModel.Project build() {
        DriveBuilder drive = new DriveBuilder(root, assumed);
        List<Pack> packs = new ArrayList<>();
        for (Branch pack : root.child("packs").children()) {
            packs.add(drive.pack(pack));
        }
        WingBuilder wings = new WingBuilder(root, movables, assumed);
        Body body = body();
        Wing wing = wings.wing(body.height());
        Model model = new Model(
                root.text("name"),
                packs,
                wing,
                tail(wing, wings),
                body,
                wheels(body),
                drive.propeller(),
                field(),
                setUps(),
                sticks(),
                servos(),
                drive.motor());
        return new ReadModel.Project(model, display, assumed.all(order), cruise.notes(), text);
    }

    private Body body() {
        Branch body = root.child("body");
        Branch tail = root.child("tail");
        double toTailEnd = tail.amount("arm") + tail.amount("chord");
        double middleChord = root.child("wing").child("sections").child("1").amount("chord");
        OptionalDouble given = body.child("length").amount();
        double left = given.isPresent() ? given.getAsDouble() - toTailEnd : middleChord;
        double nose = assumed.length(body, "nose", left > 0 ? left : middleChord);
        double length = assumed.length(body, "length", nose + toTailEnd);
        return new Body(
                length,
                assumed.length(body, "width", BODY_WIDTH_OF_LENGTH * length),
                assumed.length(body, "height", BODY_HEIGHT_OF_LENGTH * length),
                nose,
                body.text("shape").equals("boxy"));
    }

    private Tail tail(Wing wing, WingBuilder wings) {
        Branch tail = root.child("tail");
        double span = tail.amount("span");
        TailPosition position = TailPosition.valueOf(
                tail.text("position").toUpperCase(Locale.ROOT).replace(' ', '_'));
        double upTheFin =
                switch (position) {
                    case ON_THE_BODY -> 0;
                    case ON_THE_FIN -> 0.5;
                    case ON_TOP_OF_THE_FIN -> 1;
                };
        return new Tail(
                span,
                tail.amount("chord"),
                tail.amount("arm"),
                assumed.length(tail, "height", upTheFin * FIN_OF_TAIL_SPAN * span - wing.height()),
                tail.amount("incidence"),
                cruise.isIncidenceGiven() ? 0 : INCIDENCE_DOUBT,
                tail.amount("fins"),
                position,
                new AirfoilName(tail.text("airfoil")),
                wings.elevator(),
                cruise.trim(movables));
    }

    private Optional<Wheels> wheels(Body body) {
        Branch wheels = root.child("wheels");
        if (wheels.isAbsent()) {
            return Optional.empty();
        }
        double diameter = wheels.amount("diameter");
        Wheels.Legs legs = Wheels.Legs.valueOf(wheels.text("legs").toUpperCase(Locale.ROOT));
        boolean none = legs == Wheels.Legs.NONE;
        double leg = none ? 0 : LEG_OF_BODY_HEIGHT * body.height();
        double seen = none ? 0 : legs == Wheels.Legs.FAIRED ? FAIRED_LEG : SHEET_OR_WIRE_LEG;
        return Optional.of(new Wheels(
                (int) wheels.amount("count"),
                diameter,
                assumed.length(wheels, "width", WHEEL_WIDTH_OF_DIAMETER * diameter),
                legs,
                assumed.length(wheels, "leg length", leg),
                assumed.length(wheels, "leg width", seen)));
    }

    private Field field() {
        Branch field = root.child("field");
        double height = field.amount("height above sea");
        OptionalDouble temperature = field.child("temperature").amount();
        assumed.amount(field, "temperature", Dimension.TEMPERATURE, STANDARD_TEMPERATURE - STANDARD_LAPSE * height);
        return new Field(
                Field.Ground.valueOf(
                        field.text("ground").toUpperCase(Locale.ROOT).replace(' ', '_')),
                field.child("length").amount(),
                field.child("obstacle").amount("height"),
                height,
                temperature,
                field.amount("wind"));
    }

    private List<Servo> servos() {
        List<Servo> servos = new ArrayList<>();
        for (Branch servo : root.child("servos").children()) {
            OptionalDouble torque = servo.child("torque").amount();
            servos.add(new Servo(
                    movables.find(servo.name()).orElseThrow().name(),
                    torque,
                    servo.child("arm").amount(),
                    servo.child("horn").amount(),
                    servo.child("rod").amount(),
                    servo.child("swing").amount(),
                    servo.amount("lean"),
                    servo.amount("offset"),
                    yielding(servo, "give", Dimension.ANGLE, Servo.USUAL_GIVE),
                    yielding(servo, "play", Dimension.LENGTH, Servo.USUAL_PLAY)));
        }
        return servos;
    }

    /** How far a servo yields counts only where its torque is known. */
    private double yielding(Branch servo, String key, Dimension dimension, double usual) {
        return servo.has("torque")
                ? assumed.amount(servo, key, dimension, usual)
                : servo.child(key).amount().orElse(usual);
    }

    private List<SetUp> setUps() {
        List<SetUp> setUps = new ArrayList<>();
        for (Branch setUp : root.child("set-ups").children()) {
            Map<String, Double> moved = signed(setUp);
            double elevator = moved.getOrDefault(Movable.ELEVATOR, 0.0);
            moved.remove(Movable.ELEVATOR);
            String position = setUp.has(SetUpCheck.SWITCH) ? setUp.text(SetUpCheck.SWITCH) : "";
            setUps.add(new SetUp(setUp.name(), moved, elevator, position));
        }
        return setUps;
    }

    private List<Stick> sticks() {
        List<Stick> sticks = new ArrayList<>();
        for (Branch stick : root.child("sticks").children()) {
            List<String> in = stick.child("in").names().stream()
                    .map(b -> root.child("set-ups").child(b.name()).name())
                    .toList();
            if (stick.text("does").equals("roll")) {
                sticks.add(new Stick.Roll(stick.name(), rollThrows(stick), in));
            } else {
                Map<String, Double> moved = signed(stick);
                double elevator = moved.getOrDefault(Movable.ELEVATOR, 0.0);
                moved.remove(Movable.ELEVATOR);
                sticks.add(new Stick.Pull(stick.name(), moved, elevator, in));
            }
        }
        return sticks;
    }

    /** Signed angles by the surfaces' own names. */
    private Map<String, Double> signed(Branch owner) {
        Map<String, Double> angles = new LinkedHashMap<>();
        for (Branch where : owner.children()) {
            Optional<WrittenDeflection> deflection = where.value(WrittenDeflection.class);
            if (deflection.isPresent()) {
                Movable movable = movables.find(where.name()).orElseThrow();
                angles.put(movable.name(), movable.signed(deflection.get()).orElseThrow());
            }
        }
        return angles;
    }

    private Map<String, Stick.Throws> rollThrows(Branch stick) {
        Map<String, Stick.Throws> throwsBySurface = new LinkedHashMap<>();
        for (Branch where : stick.children()) {
            Optional<WrittenDeflection.Both> both = Movables.both(where);
            if (both.isPresent()) {
                Movable movable = movables.find(where.name()).orElseThrow();
                throwsBySurface.put(
                        movable.name(),
                        new Stick.Throws(
                                movable.size(both.get().up()).orElseThrow(),
                                movable.size(both.get().down()).orElseThrow()));
            }
        }
        return throwsBySurface;
    }

    /** Torque is shown as the file gives it; what is asked for comes after, and counts. */
    private static Display display(Branch root, List<Unit> shown, String text) {
        List<Unit> units = new ArrayList<>();
        TorqueUnit.of(root, text).ifPresent(units::add);
        for (Branch choice : root.child("show").children()) {
            Dimension dimension =
                    switch (NearestName.key(choice.name())) {
                        case "length" -> Dimension.LENGTH;
                        case "speed" -> Dimension.SPEED;
                        case "torque" -> Dimension.TORQUE;
                        default -> Dimension.MASS;
                    };
            units.add(Unit.spelt(choice.value(String.class).orElseThrow(), dimension)
                    .orElseThrow());
        }
        units.addAll(shown);
        return Display.metric().with(units);
    }
}
