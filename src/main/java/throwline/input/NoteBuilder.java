package throwline.input;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.notes.Noticed;
import throwline.notes.Noticed.FlownAt;
import throwline.notes.Noticed.Going;
import throwline.notes.Noticed.Speed;
import throwline.notes.Noticed.SpeedRead;
import throwline.notes.Noticed.Throttle;
import throwline.notes.Noticed.Told;
import throwline.notes.ToldBy;
import throwline.units.Dimension;
import throwline.units.QuantityReader;
import throwline.units.ReadQuantity;

/** Makes one note of one entry: what its kind needs, what does not belong to it, whose set-up and stick it names. */
final class NoteBuilder {

    /** Keys that a kind may have besides those of every note. */
    private static final Map<String, List<String>> KEYS = Map.of(
            "stall", List.of("set-up", "ground speed", "airspeed", "going"),
            "glide", List.of("set-up", "height", "distance", "time", "going", "speed"),
            "path", List.of("set-up", "height", "distance", "going", "speed"),
            "trim", List.of("set-up", "trimmed by", "elevator", "speed", "throttle"),
            "roll", List.of("set-up", "stick", "rolls", "time", "speed"),
            "float", List.of("set-up", "distance"),
            "level speed", List.of("set-up", "ground speed", "airspeed", "going", "throttle"),
            "weight", List.of("weight"),
            "balance", List.of("balance"));

    private static final List<String> OWN =
            KEYS.values().stream().flatMap(List::stream).distinct().toList();

    private final Model model;
    private final List<SetUp> asFlown;
    private final Problems problems;
    private final String day;
    private final Map<String, Integer> sources = new HashMap<>();

    NoteBuilder(Model model, List<SetUp> asFlown, Problems problems, String day) {
        this.model = model;
        this.asFlown = asFlown;
        this.problems = problems;
        this.day = day;
    }

    /** The note; empty where something is wrong with it. */
    Optional<Noticed> note(Branch note) {
        String what = FlightsBuilder.said(note, "what");
        List<String> allowed = KEYS.getOrDefault(what, OWN);
        boolean good = KEYS.containsKey(what);
        for (Branch child : note.children()) {
            boolean own = OWN.contains(child.name()) && !allowed.contains(child.name());
            if (own && !child.keyPlace().equals(note.place())) {
                problems.add(
                        child.keyPlace(),
                        child.path(),
                        throwline.words.Message.of(
                                "input.flights.not-for", child.name(), what, String.join(", ", allowed)));
                good = false;
            }
        }
        if (!good) {
            return Optional.empty();
        }
        boolean whole = !allowed.contains("set-up");
        Optional<String> setUp = whole ? Optional.of("") : setUp(note);
        if (setUp.isEmpty()) {
            return Optional.empty();
        }
        Optional<Told> told = told(note, what, setUp.get());
        return told.flatMap(t -> made(note, what, setUp.get(), t));
    }

    private Optional<Noticed> made(Branch note, String what, String setUp, Told told) {
        return switch (what) {
            case "stall" -> speed(note).map(read -> new Noticed.Stall(told, setUp, read));
            case "level speed" -> speed(note).map(read -> new Noticed.LevelSpeed(told, setUp, read));
            case "glide", "path" -> glide(note, what, setUp, told);
            case "trim" -> trim(note, setUp, told);
            case "roll" -> roll(note, setUp, told);
            case "float" ->
                needed(note, "distance")
                        ? Optional.of(new Noticed.Floated(told, setUp, note.amount("distance")))
                        : none();
            case "weight" ->
                needed(note, "weight") ? Optional.of(new Noticed.Weight(told, note.amount("weight"))) : none();
            default ->
                needed(note, "balance") ? Optional.of(new Noticed.Balance(told, note.amount("balance"))) : none();
        };
    }

    private static Optional<Noticed> none() {
        return Optional.empty();
    }

    private boolean needed(Branch note, String key) {
        if (note.has(key)) {
            return note.child(key).amount().isPresent();
        }
        problems.add(note, "input.flights.needs", FlightsBuilder.said(note, "what"), key);
        return false;
    }

    private Optional<String> setUp(Branch note) {
        List<String> names = Stream.concat(model.setUps().stream(), asFlown.stream())
                .map(SetUp::name)
                .distinct()
                .toList();
        String said = FlightsBuilder.said(note, "set-up");
        if (said.isEmpty()) {
            if (!note.has("set-up")) {
                problems.add(note, "input.flights.needs", FlightsBuilder.said(note, "what"), "set-up");
            }
            return Optional.empty();
        }
        Optional<String> found = FlightsBuilder.known(said, names);
        if (found.isEmpty()) {
            problems.add(note.child("set-up"), "input.flights.setup", UnknownKey.shown(said), String.join(", ", names));
        }
        return found;
    }

    private Optional<Told> told(Branch note, String what, String setUp) {
        String base = (setUp.isEmpty() ? what : what + " " + setUp) + ", " + day;
        int times = sources.merge(base, 1, Integer::sum);
        String said = FlightsBuilder.said(note, "told by");
        ToldBy by = said.isEmpty() ? usual(note, what) : ToldBy.valueOf(said.toUpperCase(Locale.ROOT));
        String give = FlightsBuilder.said(note, "give or take");
        OptionalDouble amount = OptionalDouble.empty();
        OptionalDouble share = OptionalDouble.empty();
        if (!give.isEmpty()) {
            amount = amount(give, dimension(what));
            share = amount(give, Dimension.FRACTION);
            if (!positive(amount) && !positive(share)) {
                problems.add(note.child("give or take"), "input.flights.give", UnknownKey.shown(give));
                return Optional.empty();
            }
        }
        return Optional.of(new Told(
                times == 1 ? base : base + " (" + times + ")",
                by,
                amount,
                share,
                (int) note.child("times").amount().orElse(1),
                !FlightsBuilder.said(note, "count").equals("no")));
    }

    private static boolean positive(OptionalDouble value) {
        return value.isPresent() && value.getAsDouble() > 0;
    }

    private static OptionalDouble amount(String text, Dimension dimension) {
        return QuantityReader.read(text, dimension) instanceof ReadQuantity.Amount amount
                ? OptionalDouble.of(amount.quantity().value())
                : OptionalDouble.empty();
    }

    private static Dimension dimension(String what) {
        return switch (what) {
            case "stall", "level speed" -> Dimension.SPEED;
            case "trim" -> Dimension.ANGLE;
            case "roll" -> Dimension.TIME;
            case "weight" -> Dimension.MASS;
            default -> Dimension.LENGTH;
        };
    }

    /** The coarsest way that gives such a value. */
    private static ToldBy usual(Branch note, String what) {
        return switch (what) {
            case "stall", "level speed" -> note.has("airspeed") ? ToldBy.AIRSPEED : ToldBy.GPS;
            case "trim" -> note.has("elevator") ? ToldBy.BENCH : ToldBy.FEEL;
            case "roll" -> ToldBy.STOPWATCH;
            case "weight" -> ToldBy.SCALE;
            case "balance" -> ToldBy.BENCH;
            default -> ToldBy.EYE;
        };
    }

    private Optional<SpeedRead> speed(Branch note) {
        OptionalDouble airspeed = note.child("airspeed").amount();
        List<Branch> said = note.child("ground speed").names();
        if (note.has("airspeed") == note.has("ground speed")) {
            problems.add(note, "input.flights.one-speed", FlightsBuilder.said(note, "what"));
            return Optional.empty();
        }
        if (note.has("airspeed")) {
            return airspeed.isPresent()
                    ? Optional.of(new SpeedRead(OptionalDouble.empty(), airspeed, Going.UNKNOWN))
                    : Optional.empty();
        }
        Optional<Going> going = going(note, "ground speed");
        List<Double> speeds = new ArrayList<>();
        for (Branch one : said) {
            ReadQuantity reading = QuantityReader.read(one.name(), Dimension.SPEED);
            if (reading instanceof ReadQuantity.Refused refused) {
                problems.add(one, refused.code(), refused.arguments().toArray());
                return Optional.empty();
            }
            speeds.add(((ReadQuantity.Amount) reading).quantity().value());
        }
        if (speeds.size() > 2 || (speeds.size() == 2 && going.isPresent() && going.get() != Going.BOTH_WAYS)) {
            problems.add(note.child("ground speed"), "input.flights.two-speeds");
            return Optional.empty();
        }
        OptionalDouble mean = speeds.stream().mapToDouble(Double::doubleValue).average();
        return mean.isPresent() ? going.map(g -> new SpeedRead(mean, OptionalDouble.empty(), g)) : Optional.empty();
    }

    private Optional<Going> going(Branch note, String because) {
        String said = FlightsBuilder.said(note, "going");
        if (said.isEmpty()) {
            if (!note.has("going")) {
                problems.add(note.child(because), "input.flights.going", because);
            }
            return Optional.empty();
        }
        return Optional.of(Going.valueOf(said.toUpperCase(Locale.ROOT).replace(' ', '_')));
    }

    private Optional<Noticed> glide(Branch note, String what, String setUp, Told told) {
        boolean path = what.equals("path");
        if (!needed(note, "height") || (path && !needed(note, "distance"))) {
            return Optional.empty();
        }
        OptionalDouble distance = note.child("distance").amount();
        OptionalDouble time = note.child("time").amount();
        if (distance.isEmpty() && time.isEmpty()) {
            problems.add(note, "input.flights.needs", what, "time");
            return Optional.empty();
        }
        Optional<Going> going = distance.isPresent() ? going(note, "distance") : Optional.of(Going.UNKNOWN);
        Optional<Speed> speed = flownAt(note);
        return going.isEmpty() || speed.isEmpty()
                ? Optional.empty()
                : Optional.of(new Noticed.Glide(
                        told, setUp, note.amount("height"), distance, time, going.get(), speed.get()));
    }

    private Optional<Speed> flownAt(Branch note) {
        String said = FlightsBuilder.said(note, "speed");
        return switch (NearestName.key(said)) {
            case "", "approach", "comingin" -> Optional.of(new Speed(FlownAt.COMING_IN, OptionalDouble.empty()));
            case "cruise" -> Optional.of(new Speed(FlownAt.CRUISE, OptionalDouble.empty()));
            case "slow" -> Optional.of(new Speed(FlownAt.SLOW, OptionalDouble.empty()));
            default -> {
                OptionalDouble value = amount(said, Dimension.SPEED);
                if (!positive(value)) {
                    problems.add(note.child("speed"), "input.flights.speed", UnknownKey.shown(said));
                    yield Optional.empty();
                }
                yield Optional.of(new Speed(FlownAt.TOLD, value));
            }
        };
    }

    private Optional<Noticed> trim(Branch note, String setUp, Told told) {
        if (note.has("elevator") == note.has("trimmed by")) {
            problems.add(note, "input.flights.one-elevator");
            return Optional.empty();
        }
        String key = note.has("elevator") ? "elevator" : "trimmed by";
        Optional<WrittenDeflection> deflection = note.child(key).value(WrittenDeflection.class);
        if (deflection.isEmpty()) {
            return Optional.empty();
        }
        if (deflection.get().sense() == WrittenDeflection.Sense.UNSAID
                && deflection.get().size() > 0) {
            problems.add(note.child(key), "input.flights.sense");
            return Optional.empty();
        }
        OptionalDouble angle = deflection.get().signed(model.tail().throwChord());
        Throttle throttle =
                switch (FlightsBuilder.said(note, "throttle")) {
                    case "cruise" -> Throttle.CRUISE;
                    case "full" -> Throttle.FULL;
                    default -> Throttle.SHUT;
                };
        if (angle.isEmpty()) {
            problems.add(note.child(key), "input.flights.throw");
            return Optional.empty();
        }
        return flownAt(note)
                .map(speed ->
                        new Noticed.Trim(told, setUp, angle.getAsDouble(), key.equals("trimmed by"), speed, throttle));
    }

    private Optional<Noticed> roll(Branch note, String setUp, Told told) {
        List<String> sticks = model.sticks().stream()
                .filter(s -> s instanceof Stick.Roll && (s.in().isEmpty() || s.in().contains(setUp)))
                .map(Stick::name)
                .toList();
        String said = FlightsBuilder.said(note, "stick");
        if (said.isEmpty() && !note.has("stick")) {
            problems.add(note, "input.flights.needs", "roll", "stick");
        }
        Optional<String> stick = FlightsBuilder.known(said, sticks);
        if (stick.isEmpty() && !said.isEmpty()) {
            problems.add(
                    note.child("stick"),
                    "input.flights.stick",
                    UnknownKey.shown(said),
                    setUp,
                    String.join(", ", sticks));
        }
        Optional<Speed> speed = flownAt(note);
        return stick.isPresent() && speed.isPresent() && needed(note, "time")
                ? Optional.of(new Noticed.Roll(
                        told,
                        setUp,
                        stick.get(),
                        note.child("rolls").amount().orElse(1),
                        note.amount("time"),
                        speed.get()))
                : Optional.empty();
    }
}
