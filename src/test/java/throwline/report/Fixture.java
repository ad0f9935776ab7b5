package throwline.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import throwline.flight.FlareElevator;
import throwline.flight.PathPoint;
import throwline.model.AirfoilName;
import throwline.model.Assumption;
import throwline.model.Body;
import throwline.model.Elevator;
import throwline.model.Field;
import throwline.model.Hinge;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Surface;
import throwline.model.Tail;
import throwline.model.TailPosition;
import throwline.model.Wing;
import throwline.model.WingSection;
import throwline.study.Comparison;
import throwline.study.FieldAnswer;
import throwline.study.FieldAnswer.FitFor;
import throwline.study.FieldAnswer.Legs;
import throwline.study.FieldAnswer.Margins;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.Headline.Basis;
import throwline.study.HeadlineNumbers;
import throwline.study.HeadlineNumbers.RollRate;
import throwline.study.ServoAnswer;
import throwline.study.SetUpResult;
import throwline.study.SetUpResult.FirstStall;
import throwline.study.SetUpResult.LoadStation;
import throwline.study.SetUpResult.Manner;
import throwline.study.SetUpResult.Side;
import throwline.study.SetUpResult.SpeedPoint;
import throwline.words.Message;

/**
 * Fixed results for tests of wording and layout. Every number is invented; nothing here was worked out by the program
 * and nothing checks its physics.
 */
public final class Fixture {

    private static final double DEG = Math.PI / 180;

    private Fixture() {}

    /** Four set-ups, two packs, one number that could not be found. */
    public static CompareAnswer orchard() {
        return answer(model("Orchard", setUps()), List.of(new Assumption("tail.incidence", "0 deg")));
    }

    /** Six set-ups that lie close together, with long names, on a field without an obstacle. */
    public static CompareAnswer crowded() {
        List<SetUp> setUps = List.of(
                new SetUp("clean", Map.of(), 0),
                new SetUp("thermal droop with ailerons", Map.of("flaps", 3 * DEG, "ailerons", 2 * DEG), 0),
                new SetUp("take-off flap", Map.of("flaps", 15 * DEG), 0),
                new SetUp("half landing flap", Map.of("flaps", 20 * DEG), 0),
                new SetUp("landing flap", Map.of("flaps", 35 * DEG), 2 * DEG),
                new SetUp("airbrake", Map.of("flaps", 55 * DEG, "ailerons", -18 * DEG), 0));
        return answer(model("Crowded House of Set-ups", setUps), List.of());
    }

    /** No number could be found for any set-up. */
    public static CompareAnswer nothingFound() {
        CompareAnswer found = orchard();
        Headline.Unknown none = new Headline.Unknown("why.no-stall");
        List<Comparison.PackResult> packs = found.comparison().packs().stream()
                .map(pack -> new Comparison.PackResult(
                        pack.pack(),
                        pack.setUps().stream()
                                .map(setUp -> nothing(setUp.setUp(), none))
                                .toList()))
                .toList();
        return new CompareAnswer(
                new Comparison(found.comparison().model(), 1.19, packs, List.of()), found.assumed(), List.of());
    }

    /** The orchard with a balance point that lies too far back. */
    public static CompareAnswer unstable() {
        CompareAnswer found = orchard();
        List<Comparison.PackResult> packs = found.comparison().packs().stream()
                .map(pack -> new Comparison.PackResult(
                        pack.pack(),
                        pack.setUps().stream()
                                .map(r -> noted(r, r.setUp().isClean() ? "note.hardly-stable" : "note.unstable"))
                                .toList()))
                .toList();
        return new CompareAnswer(
                new Comparison(found.comparison().model(), 1.19, packs, List.of()), found.assumed(), List.of());
    }

    /** The orchard with no speed that limits its flaps, for a reason of its own a set-up. */
    public static CompareAnswer noFlapLimits() {
        CompareAnswer found = orchard();
        List<String> reasons = List.of("why.nothing-moved", "why.servo-suffices", "why.no-servo", "why.servo-locked");
        Comparison.PackResult pack = found.comparison().packs().get(0);
        List<SetUpResult> changed = new ArrayList<>();
        for (int i = 0; i < reasons.size(); i++) {
            SetUpResult r = pack.setUps().get(i);
            ServoAnswer s = r.servos();
            Map<FlightQuantity, Headline> limit =
                    Map.of(FlightQuantity.FLAP_SPEED_LIMIT, new Headline.Unknown(reasons.get(i)));
            ServoAnswer servos = new ServoAnswer("", s.loads(), s.positions(), s.yields(), s.mix());
            changed.add(with(r, r.headlines().with(limit), servos, List.of()));
        }
        return new CompareAnswer(
                new Comparison(
                        found.comparison().model(),
                        1.19,
                        List.of(new Comparison.PackResult(pack.pack(), changed)),
                        List.of()),
                found.assumed(),
                List.of());
    }

    private static SetUpResult noted(SetUpResult r, String code) {
        return with(r, r.headlines(), r.servos(), List.of(Message.of(code)));
    }

    private static SetUpResult with(SetUpResult r, HeadlineNumbers headlines, ServoAnswer servos, List<Message> notes) {
        return new SetUpResult(
                r.setUp(),
                headlines,
                r.firstStall(),
                r.sweep(),
                r.load(),
                servos,
                r.field(),
                r.oneSided(),
                r.power(),
                notes);
    }

    private static SetUpResult nothing(SetUp setUp, Headline.Unknown none) {
        return new SetUpResult(
                setUp,
                HeadlineNumbers.none(none),
                new FirstStall(Side.BOTH, 0, "", Manner.SAGS),
                List.of(),
                List.of(),
                ServoAnswer.none(),
                FieldAnswer.none(),
                List.of(),
                List.of());
    }

    private static List<SetUp> setUps() {
        return List.of(
                new SetUp("clean", Map.of(), 0),
                new SetUp("take-off flap", Map.of("flaps", 15 * DEG), 0),
                new SetUp("landing flap", Map.of("flaps", 35 * DEG), 0),
                new SetUp("airbrake", Map.of("flaps", 55 * DEG, "ailerons", -18 * DEG), 0));
    }

    private static CompareAnswer answer(Model model, List<Assumption> assumed) {
        List<Comparison.PackResult> packs = new ArrayList<>();
        for (Pack pack : model.packs()) {
            double faster = Math.sqrt(pack.mass() / model.packs().get(0).mass());
            List<SetUpResult> results = new ArrayList<>();
            for (SetUp setUp : model.setUps()) {
                results.add(result(model, setUp, faster));
            }
            packs.add(new Comparison.PackResult(pack, results));
        }
        return new CompareAnswer(
                new Comparison(model, 1.19, packs, List.of(Message.of("note.assumed-bands"))), assumed, List.of());
    }

    /** A made-up but smooth aeroplane: flaps lift and drag, raised ailerons take lift and drag. */
    private static SetUpResult result(Model model, SetUp setUp, double faster) {
        double flap = setUp.deflection("flaps") / DEG;
        double aileron = setUp.deflection("ailerons") / DEG;
        double most = 1.2 + 0.010 * Math.min(flap, 35) + 0.008 * aileron;
        double drag = 0.055 + 0.0022 * flap + 0.001 * Math.abs(aileron);
        double stall = 10.4 * faster / Math.sqrt(most);
        double approach = 1.3 * stall;
        double glide = drag + 0.055 * Math.pow(most / 1.69, 2);
        double angle = Math.atan(glide / (most / 1.69));
        double elevator = (-3 + 0.08 * flap - 0.1 * aileron) * DEG;
        double change = (0.11 * flap - 0.15 * aileron) * DEG;
        boolean clean = setUp.isClean();
        List<RollRate> rolls = model.sticks().stream()
                .map(stick -> new RollRate(
                        stick.name(),
                        banded((stick.name().startsWith("low") ? 85 : 130) * (1 - flap / 120) * DEG, 0.2),
                        aileron < -7))
                .toList();
        FieldAnswer field = field(model, approach, angle, drag);
        Legs still = field.stillAir().orElseThrow();
        Legs windy = field.inWind().orElseThrow();
        Map<FlightQuantity, Headline> numbers = new EnumMap<>(PowerFixture.numbers(stall, flap));
        numbers.put(FlightQuantity.STALL_SPEED, banded(stall, 0.06));
        numbers.put(FlightQuantity.APPROACH_SPEED, banded(approach, 0.06));
        numbers.put(FlightQuantity.DESCENT_ANGLE, banded(angle, flap > 50 ? 0.2 : 0.15));
        numbers.put(FlightQuantity.SINK_RATE, banded(approach * Math.sin(angle), 0.2));
        numbers.put(FlightQuantity.APPROACH_GLIDE_RATIO, banded(1 / Math.tan(angle), 0.15));
        numbers.put(FlightQuantity.BEST_GLIDE_RATIO, banded(1 / Math.tan(angle) * 1.1, 0.15));
        numbers.put(
                FlightQuantity.NOSE_DOWN_SPEED,
                flap > 50 ? new Headline.Unknown("why.no-stall") : banded(28 / Math.sqrt(drag * 10), 0.1));
        numbers.put(FlightQuantity.ELEVATOR, around(elevator, 2 * DEG));
        numbers.put(
                FlightQuantity.ELEVATOR_CHANGE,
                clean ? new Headline.Known(0, 0, 0, Basis.ASSUMED) : around(change, Math.max(2 * DEG, 0.4 * change)));
        numbers.put(FlightQuantity.FLARE_HEIGHT, banded(still.roundOutHeight(), 0.4));
        numbers.put(FlightQuantity.FLOAT, banded(still.floated(), 0.5));
        numbers.put(FlightQuantity.FLAP_SPEED_LIMIT, ServoFixture.limit(setUp, approach));
        numbers.put(FlightQuantity.GUST_LIMIT, banded(0.2 * approach, 0.3));
        numbers.put(FlightQuantity.LANDING_DISTANCE, banded(still.total(), 0.15));
        numbers.put(FlightQuantity.LANDING_DISTANCE_IN_WIND, banded(windy.total(), 0.15));
        return new SetUpResult(
                setUp,
                new HeadlineNumbers(numbers, rolls),
                new FirstStall(
                        Side.BOTH,
                        clean ? 0.21 : 0.33,
                        clean ? "flaps" : "ailerons",
                        aileron < 0 ? Manner.SAGS : Manner.MAY_DROP_A_WING),
                sweep(drag, most, faster),
                load(model, flap, aileron, most),
                ServoFixture.servos(model, setUp, approach),
                field,
                PowerFixture.oneSided(setUp),
                PowerFixture.seen(approach / 1.3, setUp.deflection("flaps") / DEG),
                List.of());
    }

    private static List<SpeedPoint> sweep(double drag, double most, double faster) {
        List<SpeedPoint> points = new ArrayList<>();
        for (double lift = most; lift > 0.2; lift -= 0.06) {
            double glide = drag + 0.055 * lift * lift + 0.3 * Math.pow(Math.max(0, lift - most + 0.2), 2);
            double angle = Math.atan(glide / lift);
            double speed = 10.4 * faster * Math.sqrt(Math.cos(angle) / lift);
            points.add(new SpeedPoint(speed, angle, speed * Math.sin(angle), lift, glide, -0.08 * lift));
        }
        return points;
    }

    private static List<LoadStation> load(Model model, double flap, double aileron, double most) {
        List<LoadStation> stations = new ArrayList<>();
        double half = model.wing().semiSpan();
        int strips = 60;
        for (int i = 0; i < strips; i++) {
            double y = half * Math.sin(Math.PI / 2 * ((2 * i + 1.0) / strips - 1));
            double at = Math.abs(y) / half;
            double moved = at < 0.5 ? flap : aileron;
            double limit = 1.25 + 0.012 * Math.min(40, moved);
            double lift = most / 1.69 * Math.sqrt(1.05 - at * at) * 1.1 + 0.006 * moved;
            stations.add(new LoadStation(y, model.wing().chordAt(y), lift, limit));
        }
        return stations;
    }

    /** An arc, a float and a roll of made-up lengths. */
    private static FieldAnswer field(Model model, double approach, double angle, double drag) {
        Legs still = legs(model, approach, angle, drag, 0);
        Legs windy = legs(model, approach, angle, drag, model.field().wind());
        return new FieldAnswer(
                Optional.of(still),
                Optional.of(windy),
                Optional.of(new FlareElevator.Demand(-9 * DEG, -11 * DEG, 9 * DEG, false)),
                Optional.of(new Margins(
                        0.23 * approach,
                        8 * DEG,
                        0.2 * approach,
                        0.17 * approach,
                        0.5,
                        0.6 * approach,
                        approach < 11 ? FitFor.LIGHT_WIND : FitFor.MODERATE_WIND)));
    }

    private static Legs legs(Model model, double approach, double angle, double drag, double wind) {
        double ground = 1 - wind / approach;
        double height = 0.15 + approach * approach / 2.9 * (1 - Math.cos(angle));
        double arc = ground * approach * approach / 2.9 * Math.sin(angle);
        double from = Math.max(height, model.field().obstacle());
        double straight = ground * (from - height) / Math.tan(angle);
        double floated = ground * 1.3 / drag * Math.max(0, 1 - 4 * drag);
        List<PathPoint> way = new ArrayList<>();
        way.add(new PathPoint(0, from));
        for (int i = 0; i <= 10; i++) {
            double left = 1 - i / 10.0;
            double high = 0.15 + (height - 0.15) * left * left;
            way.add(new PathPoint(straight + arc * (1 - left), high));
        }
        way.add(new PathPoint(straight + arc + floated, 0));
        return new Legs(
                wind,
                straight,
                model.field().obstacle() >= height || model.field().obstacle() == 0,
                height,
                arc,
                0.95 * approach,
                0,
                floated,
                0.85 * floated,
                0.85 * approach,
                40 * ground * ground,
                0.3 * wind,
                1.5 / Math.tan(angle),
                1.4 / Math.tan(angle),
                false,
                false,
                way);
    }

    private static Headline banded(double value, double share) {
        return new Headline.Known(value, value * (1 - share), value * (1 + share), Basis.ASSUMED, 0.8);
    }

    private static Headline around(double value, double width) {
        return new Headline.Known(value, value - width, value + width, Basis.ASSUMED, 0.8);
    }

    private static Model model(String name, List<SetUp> setUps) {
        AirfoilName airfoil = new AirfoilName("clark-y");
        Wing wing = new Wing(
                0.09,
                0,
                0,
                List.of(
                        new WingSection(0, 0.300, airfoil, 0, 0),
                        new WingSection(0.92, 0.235, airfoil, 2 * DEG, 0.015)),
                List.of(
                        new Surface("flaps", 0.075, 0.46, 0.25, 0, 60 * DEG, Hinge.TAPED),
                        new Surface("ailerons", 0.47, 0.88, 0.25, 25 * DEG, 18 * DEG, Hinge.LIVING)));
        Tail tail = new Tail(
                0.6,
                0.185,
                0.9,
                0.02,
                0,
                TailPosition.ON_THE_BODY,
                new AirfoilName("naca-0009"),
                new Elevator(0.35, 20 * DEG, 20 * DEG, Hinge.TAPED));
        double obstacle = setUps.size() > 4 ? 0 : 6;
        return new Model(
                name,
                List.of(new Pack("small", 3.05, 0.084), new Pack("large", 3.42, 0.080)),
                wing,
                tail,
                new Body(1.38, 0.135, 0.155, 0.25, true),
                Optional.empty(),
                Optional.empty(),
                new Field(Field.Ground.SHORT_GRASS, OptionalDouble.of(70), obstacle, 120, OptionalDouble.of(297.15), 2),
                setUps,
                List.of(
                        new Stick.Roll(
                                "low rates", Map.of("ailerons", new Stick.Throws(12 * DEG, 10 * DEG)), List.of()),
                        new Stick.Roll(
                                "high rates", Map.of("ailerons", new Stick.Throws(25 * DEG, 18 * DEG)), List.of())));
    }
}
