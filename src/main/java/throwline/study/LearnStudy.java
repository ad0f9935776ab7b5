package throwline.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import throwline.correction.Doubt;
import throwline.correction.Doubts;
import throwline.correction.Factor;
import throwline.correction.Factors;
import throwline.correction.Flying;
import throwline.correction.LoggedReadings;
import throwline.correction.MixtureUpdate;
import throwline.correction.NotedReadings;
import throwline.correction.Posterior;
import throwline.correction.Reading;
import throwline.logs.FlightLog;
import throwline.model.Model;
import throwline.notes.FlightNotes;
import throwline.notes.FlownDay;
import throwline.notes.Noticed;
import throwline.section.AirfoilLibrary;
import throwline.section.SectionAerodynamics;
import throwline.study.Comparison.PackResult;
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
        if (notes.counted().isEmpty()) {
            return Optional.empty();
        }
        Factors factors = new Factors();
        FlownFleet fleet = FlownFleet.of(known, notes, factors, new FlownFleet.Tools(airfoils, sections, bands));
        One one = new One(known, fleet, factors, notes, logs);
        return one.readings.isEmpty() && one.settled ? Optional.empty() : Optional.of(one.lessons());
    }

    /** One estimate. */
    private static final class One {
        private final Comparison known;
        private final FlownFleet fleet;
        private final Factors factors;
        private final FlightNotes notes;
        private final List<Reading> readings = new ArrayList<>();
        private final List<String> unused = new ArrayList<>();
        private final List<FlownFor> flown = new ArrayList<>();
        private final List<LoggedDay> logged = new ArrayList<>();
        private final Map<String, Integer> winds = new HashMap<>();
        /** False where no state fits the notes: nothing is learnt then, and all of them are named. */
        private final boolean settled;

        private final Posterior posterior;

        One(Comparison known, FlownFleet fleet, Factors factors, FlightNotes notes, Map<String, FlightLog> logs) {
            this.known = known;
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
            NotedReadings noted =
                    new NotedReadings(factors, fleet, day, known.model().field());
            readings.addAll(noted.all());
            winds.put(day.name(), noted.air().wind());
            if (log.isPresent()) {
                LoggedDay one = LoggedDay.of(day, log.get(), fleet, known.model());
                List<Reading> found = new LoggedReadings(factors, fleet, day, noted.air(), one.log()).all();
                logged.add(one);
                readings.addAll(found);
                flown.addAll(one.flown(setUp -> !fleet.isChanged(day, setUp)));
            } else {
                day.log().ifPresent(source -> unused.add(source.file()));
            }
            for (Noticed noticed : day.noticed()) {
                boolean used = readings.stream()
                        .anyMatch(r -> r.source().equals(noticed.told().source()));
                if (used && !noticed.setUp().isEmpty() && !fleet.isChanged(day, noticed.setUp())) {
                    flown.add(FlownFor.of(noticed));
                } else if (!used && noticed.told().counts()) {
                    unused.add(noticed.told().source());
                }
            }
        }

        Lessons lessons() {
            Doubts doubts = new Doubts(posterior, readings);
            LearntState state = new LearntState(posterior, doubts.wider());
            return new Lessons(learnt(doubts, state), (result, pack) -> corrected(result, pack, state));
        }

        private Learnt learnt(Doubts doubts, LearntState state) {
            List<PackResult> packs = known.packs().stream()
                    .map(pack -> new PackResult(
                            pack.pack(),
                            pack.setUps().stream()
                                    .map(result -> corrected(result, pack.pack().name(), state))
                                    .toList()))
                    .toList();
            Comparison after = new Comparison(known.model(), known.density(), packs, known.warnings());
            return new Learnt(
                    known,
                    after,
                    notes.counted().size(),
                    (int) readings.stream().map(Reading::source).distinct().count(),
                    notes.counted().stream()
                            .map(FlownDay::date)
                            .max(Comparator.naturalOrder())
                            .orElse(""),
                    flown.stream().map(FlownFor::setUp).distinct().toList(),
                    doubts.all(),
                    doubts.allOneWay(),
                    doubts.wider(),
                    winds(),
                    unused,
                    changed(),
                    new NextFlights(known, after, fleet, posterior, factors).advice(),
                    surprises(packs),
                    logged,
                    new MeasuredMarks(known, fleet, posterior, readings).of(flown));
        }

        private SetUpResult corrected(SetUpResult result, String pack, LearntState state) {
            Model model = known.model();
            Optional<Flying> flying = fleet.now(result.setUp().name(), pack);
            Optional<Flying> reference = result.setUp().equals(model.reference())
                    ? Optional.empty()
                    : fleet.now(model.reference().name(), pack);
            return flying.map(f -> new LearntRows(
                                    model,
                                    result,
                                    f,
                                    reference,
                                    state,
                                    quantity -> isFlown(result.setUp().name(), quantity))
                            .corrected())
                    .orElse(result);
        }

        /** Whether a set-up was flown for a number, by a note that does not contradict the rest. */
        private boolean isFlown(String setUp, FlightQuantity quantity) {
            return flown.stream()
                    .filter(one -> one.setUp().equals(setUp) && one.tellsOf(quantity))
                    .anyMatch(one -> posterior.wrong().getOrDefault(one.source(), 0.0) <= Doubt.CONTRADICTS);
        }

        /** Winds that some reading tells of. */
        private List<WindFound> winds() {
            List<WindFound> found = new ArrayList<>();
            for (FlownDay day : notes.counted()) {
                int place = winds.getOrDefault(day.name(), 0);
                Factor told = factors.all().get(place);
                double sd = posterior.sd(place);
                if (sd < told.sd() * (1 - 1e-9)) {
                    found.add(new WindFound(day.name(), told.mean(), posterior.state()[place], sd, told.sd()));
                }
            }
            return found;
        }

        private List<String> changed() {
            Set<String> changed = new TreeSet<>();
            for (FlownDay day : notes.counted()) {
                day.asFlown().stream()
                        .filter(s -> fleet.isChanged(day, s.name()))
                        .forEach(s -> changed.add(s.name()));
            }
            return List.copyOf(changed);
        }

        private static List<String> surprises(List<PackResult> packs) {
            Set<String> names = new LinkedHashSet<>();
            for (SetUpResult result : packs.get(0).setUps()) {
                for (HeadlineNumbers.Entry entry : result.headlines().all()) {
                    if (entry.number() instanceof Headline.Known known
                            && entry.quantity().isOn(FlightQuantity.Screen.CLOSE_CALLS)
                            && known.learnt()
                                    .filter(old -> known.value() > old.high() || known.value() < old.low())
                                    .isPresent()) {
                        names.add(result.setUp().name());
                    }
                }
            }
            return List.copyOf(names);
        }
    }
}
