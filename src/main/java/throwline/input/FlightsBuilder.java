package throwline.input;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.notes.FlightNotes;
import throwline.notes.FlownDay;
import throwline.notes.FlownDay.AirOfDay;
import throwline.notes.FlownDay.Where;
import throwline.notes.FlownDay.Wind;
import throwline.notes.FlownDay.WindTold;
import throwline.notes.LogSource;
import throwline.notes.Noticed;

/** Makes notes of a checked file of flights, held against the model that they are about. */
final class FlightsBuilder {

    private final Branch root;
    private final Model model;
    private final Problems problems;
    private final Set<String> logs = new HashSet<>();

    FlightsBuilder(Branch root, Model model, Problems problems) {
        this.root = root;
        this.model = model;
        this.problems = problems;
    }

    FlightNotes build() {
        List<FlownDay> days = new ArrayList<>();
        Map<String, Integer> named = new HashMap<>();
        for (Branch flight : root.child("flights").children()) {
            String date = date(flight);
            String base = date.isEmpty() ? "flight " + flight.name() : date;
            int times = named.merge(base, 1, Integer::sum);
            days.add(day(flight, date, times == 1 ? base : base + " (" + times + ")"));
        }
        return new FlightNotes(days);
    }

    private FlownDay day(Branch flight, String date, String name) {
        Optional<String> pack = pack(flight);
        List<SetUp> asFlown = asFlown(flight.child("set-ups"));
        Branch air = flight.child("air");
        NoteBuilder notes = new NoteBuilder(model, asFlown, problems, name);
        List<Noticed> noticed = new ArrayList<>();
        for (Branch note : flight.child("noticed").children()) {
            notes.note(note).ifPresent(noticed::add);
        }
        Branch log = flight.child("log");
        Optional<LogSource> source = new LogBuilder(model, problems).log(log);
        if (source.isPresent() && !logs.add(source.get().file())) {
            problems.add(
                    log.child("file"),
                    "input.flights.log.twice",
                    UnknownKey.shown(source.get().file()));
        }
        return new FlownDay(
                name,
                date,
                pack.orElse(""),
                flight.child("weight").amount(),
                flight.child("balance").amount(),
                new AirOfDay(
                        air.child("temperature").amount(),
                        air.child("pressure").amount(),
                        air.child("height above sea").amount()),
                wind(flight.child("wind")),
                noticed,
                asFlown,
                !said(flight, "count").equals("no"),
                said(flight, "because"),
                source);
    }

    /** A choice or text; empty where nothing, or nothing right, stands there. */
    static String said(Branch branch, String key) {
        return branch.child(key).value(String.class).orElse("");
    }

    private String date(Branch flight) {
        String said = said(flight, "date");
        if (said.isEmpty()) {
            return "";
        }
        try {
            return LocalDate.parse(said).toString();
        } catch (DateTimeException e) {
            problems.add(flight.child("date"), "input.flights.date", UnknownKey.shown(said));
            return "";
        }
    }

    private Optional<String> pack(Branch flight) {
        List<String> names = model.packs().stream().map(Pack::name).toList();
        String said = said(flight, "pack");
        if (said.isEmpty()) {
            if (names.size() > 1 && !flight.has("pack")) {
                problems.add(flight, "input.flights.pack.needed", String.join(", ", names));
            }
            return Optional.of(names.get(0));
        }
        Optional<String> found = known(said, names);
        if (found.isEmpty()) {
            problems.add(flight.child("pack"), "input.flights.pack", UnknownKey.shown(said), String.join(", ", names));
        }
        return found;
    }

    /** A name among names, as they are spelt. */
    static Optional<String> known(String said, List<String> names) {
        String wanted = NearestName.key(said);
        return names.stream().filter(n -> NearestName.key(n).equals(wanted)).findFirst();
    }

    private static Optional<Wind> wind(Branch wind) {
        OptionalDouble speed = wind.child("speed").amount();
        if (speed.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Wind(
                speed.getAsDouble(),
                WindTold.valueOf(said(wind, "told by").toUpperCase(Locale.ROOT)),
                said(wind, "at").equals("the ground") ? Where.GROUND : Where.MODEL));
    }

    /** Throws as flown; surfaces that are not named stood at zero. */
    private List<SetUp> asFlown(Branch setUps) {
        List<SetUp> flown = new ArrayList<>();
        List<String> surfaces = new ArrayList<>();
        model.wing().surfaces().forEach(s -> surfaces.add(s.name()));
        surfaces.add(Movable.ELEVATOR);
        for (Branch setUp : setUps.children()) {
            Map<String, Double> moved = new LinkedHashMap<>();
            for (Branch where : setUp.children()) {
                Optional<String> surface = known(where.name(), surfaces);
                Optional<WrittenDeflection> deflection = where.value(WrittenDeflection.class);
                if (surface.isEmpty()) {
                    problems.add(
                            where.keyPlace(),
                            where.path(),
                            throwline.words.Message.of(
                                    "input.flights.surface",
                                    UnknownKey.shown(where.name()),
                                    String.join(", ", surfaces)));
                } else if (deflection.isPresent()) {
                    OptionalDouble angle = deflection.get().signed(model.throwChord(surface.get()));
                    if (angle.isEmpty()) {
                        problems.add(where, "input.flights.throw");
                    } else {
                        moved.put(surface.get(), angle.getAsDouble());
                    }
                }
            }
            double elevator = moved.getOrDefault(Movable.ELEVATOR, 0.0);
            moved.remove(Movable.ELEVATOR);
            List<String> names = model.setUps().stream().map(SetUp::name).toList();
            flown.add(new SetUp(known(setUp.name(), names).orElse(setUp.name()), moved, elevator));
        }
        return flown;
    }
}
