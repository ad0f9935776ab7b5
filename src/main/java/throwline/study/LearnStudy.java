package throwline.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import throwline.correction.Doubts;
import throwline.correction.Factor;
import throwline.correction.Factors;
import throwline.correction.LoggedReadings;
import throwline.correction.MixtureUpdate;
import throwline.correction.NotedReadings;
import throwline.correction.Posterior;
import throwline.correction.Reading;
import throwline.logs.FlightLog;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.notes.FlightNotes;
import throwline.notes.FlownDay;
import throwline.notes.Noticed;
import throwline.section.AirfoilLibrary;
import throwline.section.SectionAerodynamics;
import throwline.study.Learnt.WindFound;

/** "What do the flights tell?": the numbers of a model after what was noticed in flight. */
public final class LearnStudy {

    private final SectionAerodynamics sections;
    private final Bands bands;

    /**
     * @param sections makes section curves
     * @param bands the bands of headline numbers
     */
    public LearnStudy(SectionAerodynamics sections, Bands bands) {
        this.sections = sections;
        this.bands = bands;
    }

    /**
     * Learns from notes.
     *
     * @param known the model before any flight, with the packs that are to be answered
     * @param airfoils where its airfoils are found
     * @param notes set-ups, packs and sticks in them are those of the model
     * @return what they tell; empty where nothing counts
     */
    public Optional<Lessons> learn(Comparison known, AirfoilLibrary airfoils, FlightNotes notes) {
        return learn(known, airfoils, notes, Map.of());
    }

    /**
     * Learns from notes and logs.
     *
     * @param known the model before any flight, with the packs that are to be answered
     * @param airfoils where its airfoils are found
     * @param notes set-ups, packs and sticks in them are those of the model
     * @param logs by the name of the day
     * @return what they tell; empty where nothing counts
     */
    public Optional<Lessons> learn(
            Comparison known, AirfoilLibrary airfoils, FlightNotes notes, Map<String, FlightLog> logs) {
        return learn(known, Optional.empty(), airfoils, notes, logs).map(one -> one.lessons(known, one.fleet));
    }

    /**
     * Learns from notes and logs what they tell of the model and of other throws: one estimate for both, so that their
     * differences are those of the throws.
     *
     * @param known the model as its file has it before any flight
     * @param tried the same with throws that are tried; the packs are those of {@code known}
     * @param airfoils where its airfoils are found
     * @param notes flown with the throws of the file where they say no others
     * @param logs by the name of the day
     * @return what they tell; empty where nothing counts
     */
    public Optional<TriedLessons> learn(
            Comparison known,
            Comparison tried,
            AirfoilLibrary airfoils,
            FlightNotes notes,
            Map<String, FlightLog> logs) {
        return learn(known, Optional.of(tried), airfoils, notes, logs)
                .map(one -> new TriedLessons(one.lessons(known, one.fleet), one.lessons(tried, one.fleet.asTried())));
    }

    private Optional<One> learn(
            Comparison known,
            Optional<Comparison> tried,
            AirfoilLibrary airfoils,
            FlightNotes notes,
            Map<String, FlightLog> logs) {
        if (notes.counted().isEmpty()) {
            return Optional.empty();
        }
        Factors factors = new Factors();
        FlownFleet fleet = FlownFleet.of(known, tried, notes, factors, new FlownFleet.Tools(airfoils, sections, bands));
        One one = new One(known.model(), fleet, factors, notes, logs);
        return one.readings.isEmpty() && one.settled ? Optional.empty() : Optional.of(one);
    }

    /** One estimate. */
    private static final class One {
        private final Model model;
        private final FlownFleet fleet;
        private final Factors factors;
        private final FlightNotes notes;
        private final List<Reading> readings = new ArrayList<>();
        private final List<String> unused = new ArrayList<>();
        private final List<OnDay> flown = new ArrayList<>();
        private final List<LoggedDay> logged = new ArrayList<>();
        private final Map<String, Integer> winds = new HashMap<>();
        /** False where no state fits the notes: nothing is learnt then, and all of them are named. */
        private final boolean settled;

        private final Posterior posterior;

        One(Model model, FlownFleet fleet, Factors factors, FlightNotes notes, Map<String, FlightLog> logs) {
            this.model = model;
            this.fleet = fleet;
            this.factors = factors;
            this.notes = notes;
            for (FlownDay day : notes.counted()) {
                take(day, Optional.ofNullable(logs.get(day.name())));
            }
            Posterior found = MixtureUpdate.learn(factors.all(), readings);
            settled = found.converged();
            if (!settled) {
                readings.stream().map(Reading::source).distinct().forEach(unused::add);
                readings.clear();
                flown.clear();
            }
            posterior = settled ? found : MixtureUpdate.learn(factors.all(), readings);
        }

        private void take(FlownDay day, Optional<FlightLog> log) {
            NotedReadings noted = new NotedReadings(factors, fleet, day, model.field());
            readings.addAll(noted.all());
            winds.put(day.name(), noted.air().wind());
            if (log.isPresent()) {
                LoggedDay one = LoggedDay.of(day, log.get(), fleet, model);
                List<Reading> found = new LoggedReadings(factors, fleet, day, noted.air(), one.log()).all();
                logged.add(one);
                readings.addAll(found);
                one.flown().forEach(each -> flown.add(new OnDay(day, each)));
            } else {
                day.log().ifPresent(source -> unused.add(source.file()));
            }
            for (Noticed noticed : day.noticed()) {
                boolean used = readings.stream()
                        .anyMatch(r -> r.source().equals(noticed.told().source()));
                if (used && !noticed.setUp().isEmpty()) {
                    flown.add(new OnDay(day, FlownFor.of(noticed)));
                } else if (!used && noticed.told().counts()) {
                    unused.add(noticed.told().source());
                }
            }
        }

        /** What they tell of these numbers, whose set-ups stand as a fleet has them. */
        Lessons lessons(Comparison of, FlownFleet as) {
            Doubts doubts = new Doubts(posterior, readings);
            LearntState state = new LearntState(posterior, doubts.wider());
            List<FlownFor> same = flown.stream()
                    .filter(one -> !as.isChanged(one.day, one.flown.setUp()))
                    .map(OnDay::flown)
                    .toList();
            LearntPacks packs = new LearntPacks(of, as, posterior, state, same);
            return new Lessons(learnt(packs, as, doubts, same), packs::corrected);
        }

        private Learnt learnt(LearntPacks packs, FlownFleet as, Doubts doubts, List<FlownFor> same) {
            Comparison of = packs.before();
            Comparison after = packs.after();
            return new Learnt(
                    of,
                    after,
                    notes.counted().size(),
                    (int) readings.stream().map(Reading::source).distinct().count(),
                    notes.counted().stream()
                            .map(FlownDay::date)
                            .max(Comparator.naturalOrder())
                            .orElse(""),
                    same.stream().map(FlownFor::setUp).distinct().toList(),
                    doubts.all(),
                    doubts.allOneWay(),
                    doubts.wider(),
                    winds(),
                    unused,
                    changed(as),
                    new NextFlights(of, after, as, posterior, factors).advice(),
                    packs.surprises(),
                    logged,
                    new MeasuredMarks(of, as, posterior, readings).of(same));
        }

        /** Winds that some reading tells of. */
        private List<WindFound> winds() {
            List<WindFound> found = new ArrayList<>();
            for (FlownDay day : notes.counted()) {
                int place = winds.getOrDefault(day.name(), 0);
                Factor told = factors.all().get(place);
                double sd = posterior.sd(place);
                if (sd < told.sd() * (1 - 1e-9)) {
                    found.add(new WindFound(
                            day.name(),
                            told.mean(),
                            day.wind().isPresent(),
                            posterior.state()[place],
                            sd,
                            told.sd()));
                }
            }
            return found;
        }

        private List<String> changed(FlownFleet as) {
            Set<String> changed = new TreeSet<>();
            for (FlownDay day : notes.counted()) {
                day.asFlown().stream()
                        .map(SetUp::name)
                        .filter(name -> as.isChanged(day, name))
                        .forEach(changed::add);
            }
            flown.stream()
                    .filter(one -> as.isChanged(one.day, one.flown.setUp()))
                    .forEach(one -> changed.add(one.flown.setUp()));
            return List.copyOf(changed);
        }
    }

    /** What a set-up was flown for on a day. */
    private record OnDay(FlownDay day, FlownFor flown) {}
}
