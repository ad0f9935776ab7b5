package throwline.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
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

/** Set-ups of a model with its packs as learning knows them, those with other throws on a day, and those that are tried, included. */
final class FlownFleet implements NotedReadings.Fleet {

    private final Model model;
    private final FlownThrows standings;
    private final Aeroplane aeroplane;
    private final Map<String, Flying> flying;
    private final UnaryOperator<String> standing;

    private FlownFleet(
            Model model,
            FlownThrows standings,
            Aeroplane aeroplane,
            Map<String, Flying> flying,
            UnaryOperator<String> standing) {
        this.model = model;
        this.standings = standings;
        this.aeroplane = aeroplane;
        this.flying = flying;
        this.standing = standing;
    }

    /** What is needed besides the model to predict flights. */
    record Tools(AirfoilLibrary airfoils, SectionAerodynamics sections, Bands bands) {}

    /**
     * The fleet of these notes.
     *
     * @param known the model before any flight, with any packs
     * @param tried the same with throws that are tried
     * @param notes the flights
     * @param factors of the estimate
     * @param tools flies packs and set-ups that are not known yet
     */
    static FlownFleet of(
            Comparison known, Optional<Comparison> tried, FlightNotes notes, Factors factors, Tools tools) {
        Model model = known.model();
        FlownThrows standings = new FlownThrows(model, notes, tried.map(Comparison::model));
        FlownFleet fleet =
                new FlownFleet(model, standings, new Aeroplane(factors), new HashMap<>(), UnaryOperator.identity());
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
        results.forEach(pack -> fleet.take(pack, model.reference(), balance));
        List<SetUp> changed = standings.onDays();
        if (!changed.isEmpty()) {
            Model as = model.withSetUps(Stream.concat(Stream.of(model.reference()), changed.stream())
                    .toList());
            List<Pack> packs = results.stream().map(PackResult::pack).toList();
            study.compare(as, tools.airfoils(), packs)
                    .packs()
                    .forEach(pack -> fleet.take(pack, model.reference(), balance));
        }
        tried.ifPresent(other -> other.packs()
                .forEach(pack -> fleet.asTried().take(pack, other.model().reference(), balance)));
        return fleet;
    }

    /** The same in which a set-up has the throws that are tried. */
    FlownFleet asTried() {
        return new FlownFleet(model, standings, aeroplane, flying, standings::tried);
    }

    private Optional<SetUp> setUp(String name) {
        return model.setUps().stream().filter(s -> s.name().equals(name)).findFirst();
    }

    /** Takes in what is not known yet of these results. */
    private void take(PackResult pack, SetUp reference, double balance) {
        Headline other = pack.setUps().stream()
                .filter(r -> r.setUp().equals(reference))
                .findFirst()
                .map(r -> r.number(FlightQuantity.ELEVATOR))
                .orElse(new Headline.Unknown("why.reference-unknown"));
        for (SetUpResult result : pack.setUps()) {
            String name = standing.apply(result.setUp().name());
            if (!flying.containsKey(key(name, pack.pack().name()))) {
                take(name, result, pack.pack(), other, balance);
            }
        }
    }

    private void take(String name, SetUpResult result, Pack pack, Headline reference, double balance) {
        Optional<SetUpErrors> errors = PriorErrors.of(result, reference);
        if (errors.isEmpty()
                || result.sweep().size() < 2
                || !(result.stallSpeed() instanceof Headline.Known stall)
                || !(result.approachSpeed() instanceof Headline.Known approach)) {
            return;
        }
        aeroplane.add(
                name, errors.get(), standings.ownPart(name, other -> flying.containsKey(key(other, pack.name()))));
        Map<String, Double> rolls = new HashMap<>();
        result.rollRates().forEach(roll -> {
            if (roll.rate() instanceof Headline.Known rate && rate.value() > 0) {
                rolls.put(roll.stick(), rate.value() / approach.value());
            }
        });
        double floats =
                result.number(FlightQuantity.FLOAT) instanceof Headline.Known known ? known.value() : Double.NaN;
        SweptFlight swept = new SweptFlight(stall.value(), approach.value(), result.sweep(), floats, balance, rolls);
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

    /** A set-up as it stands now, with a pack. */
    Optional<Flying> now(String setUp, String pack) {
        return Optional.ofNullable(flying.get(key(standing.apply(setUp), pack)));
    }

    /** Whether a set-up stood otherwise on a day than now. */
    boolean isChanged(FlownDay day, String setUp) {
        return !standings.areSame(standings.on(day, setUp), standing.apply(setUp));
    }

    @Override
    public Optional<Flying> flying(FlownDay day, String setUp) {
        String then = standings.on(day, setUp);
        return Optional.ofNullable(flying.get(key(then.equals(setUp) ? standing.apply(setUp) : then, day.pack())));
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
