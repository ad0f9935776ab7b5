package throwline.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import throwline.correction.Aeroplane;
import throwline.correction.Factors;
import throwline.correction.Flying;
import throwline.correction.NotedReadings;
import throwline.correction.SetUpErrors;
import throwline.flight.Airframe;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.notes.FlightNotes;
import throwline.notes.FlownDay;
import throwline.section.AirfoilLibrary;
import throwline.section.SectionAerodynamics;
import throwline.study.Comparison.PackResult;

/**
 * Set-ups of a model with its packs as learning knows them, those whose throws were others on a day included. A set-up whose
 * throws changed by more than three degrees since is another one, and the less like the first the further it moved.
 */
final class FlownFleet implements NotedReadings.Fleet {

    /** Throws within this are the same, and own errors have nothing in common from there on, rad (PRACTICE). */
    private static final double SAME = Math.toRadians(3);

    private static final double UNLIKE = Math.toRadians(20);

    private final Model model;
    private final Aeroplane aeroplane;
    private final Map<String, Flying> flying = new HashMap<>();
    private final Map<String, String> variants = new LinkedHashMap<>();

    private FlownFleet(Model model, Factors factors) {
        this.model = model;
        aeroplane = new Aeroplane(factors);
    }

    /** What is needed besides the model to predict flights. */
    record Tools(AirfoilLibrary airfoils, SectionAerodynamics sections, Bands bands) {}

    /**
     * The fleet of these notes.
     *
     * @param known the model before any flight, with any packs
     * @param notes the flights
     * @param factors of the estimate
     * @param tools flies packs and set-ups that are not known yet
     */
    static FlownFleet of(Comparison known, FlightNotes notes, Factors factors, Tools tools) {
        Model model = known.model();
        FlownFleet fleet = new FlownFleet(model, factors);
        List<PackResult> results = new ArrayList<>(known.packs());
        Set<String> wanted = new TreeSet<>();
        notes.counted().forEach(day -> wanted.add(day.pack()));
        known.packs().forEach(pack -> wanted.remove(pack.pack().name()));
        List<Pack> missing = model.packs().stream()
                .filter(pack -> wanted.contains(pack.name()))
                .toList();
        ComparisonStudy study = new ComparisonStudy(tools.sections(), tools.bands());
        if (!missing.isEmpty()) {
            results.addAll(study.compare(model, tools.airfoils(), missing).packs());
        }
        double balance = fleet.balanceAnswer(results.get(0), tools);
        fleet.take(results, model.setUps(), balance);
        Map<SetUp, String> changed = fleet.changed(notes);
        if (!changed.isEmpty()) {
            Model as = model.withSetUps(Stream.concat(Stream.of(model.reference()), changed.keySet().stream())
                    .toList());
            List<Pack> packs = results.stream().map(PackResult::pack).toList();
            fleet.take(study.compare(as, tools.airfoils(), packs).packs(), List.copyOf(changed.keySet()), balance);
        }
        return fleet;
    }

    /** Set-ups that stood otherwise on a day, each under a name of its own. */
    private Map<SetUp, String> changed(FlightNotes notes) {
        Map<SetUp, String> changed = new LinkedHashMap<>();
        for (FlownDay day : notes.counted()) {
            for (SetUp flown : day.asFlown()) {
                Optional<SetUp> now = setUp(flown.name());
                if (now.isEmpty() || apart(now.get(), flown) > SAME) {
                    String name = flown.name() + " as on " + day.name();
                    changed.put(new SetUp(name, flown.deflections(), flown.elevator()), flown.name());
                    variants.put(key(day.name(), flown.name()), name);
                }
            }
        }
        return changed;
    }

    private Optional<SetUp> setUp(String name) {
        return model.setUps().stream().filter(s -> s.name().equals(name)).findFirst();
    }

    private double apart(SetUp one, SetUp other) {
        return model.wing().surfaces().stream()
                .mapToDouble(s -> Math.abs(one.deflection(s.name()) - other.deflection(s.name())))
                .max()
                .orElse(0);
    }

    private void take(List<PackResult> results, List<SetUp> setUps, double balance) {
        for (PackResult pack : results) {
            Headline reference = pack.setUps().stream()
                    .filter(r -> r.setUp().equals(model.reference()))
                    .findFirst()
                    .map(SetUpResult::elevator)
                    .orElse(new Headline.Unknown("why.reference-unknown"));
            for (SetUpResult result : pack.setUps()) {
                if (setUps.contains(result.setUp())) {
                    take(result, pack.pack(), reference, balance);
                }
            }
        }
    }

    private void take(SetUpResult result, Pack pack, Headline reference, double balance) {
        Optional<SetUpErrors> errors = PriorErrors.of(result, reference);
        if (errors.isEmpty()
                || result.sweep().size() < 2
                || !(result.stallSpeed() instanceof Headline.Known stall)
                || !(result.approachSpeed() instanceof Headline.Known approach)) {
            return;
        }
        String name = result.setUp().name();
        Optional<SetUp> like = variants.containsValue(name)
                ? model.setUps().stream()
                        .filter(s -> name.startsWith(s.name() + " as on "))
                        .findFirst()
                : Optional.empty();
        if (like.isPresent() && flying.containsKey(key(like.get().name(), pack.name()))) {
            double likeness = Math.max(0, 1 - apart(like.get(), result.setUp()) / UNLIKE);
            aeroplane.add(name, errors.get(), like.get().name(), likeness);
        } else {
            aeroplane.add(name, errors.get());
        }
        Map<String, Double> rolls = new HashMap<>();
        result.rollRates().forEach(roll -> {
            if (roll.rate() instanceof Headline.Known rate && rate.value() > 0) {
                rolls.put(roll.stick(), rate.value() / approach.value());
            }
        });
        SweptFlight swept = new SweptFlight(stall.value(), approach.value(), result.sweep(), balance, rolls);
        flying.put(key(name, pack.name()), aeroplane.flying(name, pack.name(), swept));
    }

    /** Elevator for each metre that the balance lies further back, at the approach speed of the reference: from a trial. */
    private double balanceAnswer(PackResult pack, Tools tools) {
        InputUncertainty balance =
                new InputUncertainty(InputUncertainty.Kind.BALANCE, "", FlyResult.Sensitivity.BALANCE);
        PerturbedRun trial = new PerturbedRun(
                new Airframe(model, tools.airfoils(), tools.sections()),
                tools.airfoils(),
                tools.sections(),
                pack.pack(),
                model.reference());
        double above = trial.fly(Map.of(balance, balance.size()))[PerturbedRun.ELEVATOR];
        double below = trial.fly(Map.of(balance, -balance.size()))[PerturbedRun.ELEVATOR];
        double answer = (above - below) / (2 * balance.size());
        return Double.isFinite(answer) ? answer : 0;
    }

    private static String key(String one, String other) {
        return one + "\n" + other;
    }

    /** A set-up as the model file has it now, with a pack. */
    Optional<Flying> now(String setUp, String pack) {
        return Optional.ofNullable(flying.get(key(setUp, pack)));
    }

    /** Days on which a set-up stood otherwise than now. */
    boolean isChanged(FlownDay day, String setUp) {
        return variants.containsKey(key(day.name(), setUp));
    }

    @Override
    public Optional<Flying> flying(FlownDay day, String setUp) {
        return now(variants.getOrDefault(key(day.name(), setUp), setUp), day.pack());
    }

    @Override
    public Optional<Flying> reference(FlownDay day) {
        return now(model.reference().name(), day.pack());
    }

    @Override
    public double elevator(FlownDay day, String setUp) {
        return day.asFlown().stream()
                .filter(s -> s.name().equals(setUp))
                .findFirst()
                .or(() -> setUp(setUp))
                .map(SetUp::elevator)
                .orElse(0.0);
    }

    @Override
    public int weight(FlownDay day) {
        return aeroplane.weight(day.pack());
    }

    @Override
    public double mass(FlownDay day) {
        return pack(day).mass();
    }

    @Override
    public int balance(FlownDay day) {
        return aeroplane.balance(day.pack());
    }

    @Override
    public double balancePoint(FlownDay day) {
        return pack(day).balance();
    }

    private Pack pack(FlownDay day) {
        return model.packs().stream()
                .filter(p -> p.name().equals(day.pack()))
                .findFirst()
                .orElseThrow();
    }
}
