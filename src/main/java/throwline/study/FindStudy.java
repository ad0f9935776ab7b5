package throwline.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import throwline.flight.Airframe;
import throwline.flight.Attitude;
import throwline.flight.Flight;
import throwline.flight.Stall;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.section.AirfoilLibrary;
import throwline.section.SectionAerodynamics;
import throwline.sizing.CandidateFlight;
import throwline.sizing.FoundSetUp;
import throwline.sizing.FoundThrow;
import throwline.sizing.Limit;
import throwline.sizing.MixCurve;
import throwline.sizing.MixSearch;
import throwline.sizing.RollHelp;
import throwline.sizing.RollHelpSearch;
import throwline.sizing.RollThrow;
import throwline.sizing.SetUpSearch;
import throwline.sizing.SetUpWants;
import throwline.sizing.SetUpWants.WantedDescent;
import throwline.sizing.SetUpWants.WantedRoll;
import throwline.sizing.SurfaceGroups;
import throwline.study.CruiseTrimStudy.Rigged;
import throwline.study.FindResult.ClimbFound;
import throwline.study.FindResult.HelpFound;
import throwline.study.FindResult.LoopFound;
import throwline.study.FindResult.RollFound;
import throwline.study.FindResult.SetUpFound;
import throwline.study.FindResult.TakeOffFound;
import throwline.study.FindResult.TrimFound;
import throwline.units.Dimension;
import throwline.units.Quantity;
import throwline.words.Message;

/** "What must stand where?": from what a pilot wants to throws and mixes. */
public final class FindStudy {
    /** Slower than this over the stall speed no mix is made. */
    private static final double SLOWEST_MIX = 1.05;

    /** Shares of a lever's way that are tried where its end cannot be held. */
    private static final double[] PART_WAY = {0.75, 0.5, 0.25};

    private final SectionAerodynamics sections;
    private final Bands bands;

    /**
     * @param sections makes section curves
     * @param bands the bands of headline numbers
     */
    public FindStudy(SectionAerodynamics sections, Bands bands) {
        this.sections = sections;
        this.bands = bands;
    }

    /**
     * Finds it.
     *
     * @param model the model; {@link FindRefusal} has nothing against the question
     * @param airfoils where its airfoils are found; every name of the model must be there
     * @param question what is wanted
     */
    public FindResult find(Model model, AirfoilLibrary airfoils, FindQuestion question) {
        Rigged rigged = new CruiseTrimStudy(sections, bands).rigged(model, airfoils);
        return new One(new Airframe(rigged.model(), airfoils, sections), question, rigged.notes()).result(airfoils);
    }

    /** One question. */
    private final class One {
        private final Airframe airframe;
        private final Model model;
        private final FindQuestion question;
        private final SurfaceGroups groups;
        private final Flight reference;
        private final Optional<Stall> referenceStall;
        private final List<Message> notes = new ArrayList<>();

        One(Airframe airframe, FindQuestion question, List<Message> known) {
            notes.addAll(known);
            this.airframe = airframe;
            this.question = question;
            model = airframe.model();
            groups = SurfaceGroups.of(model);
            reference = new Flight(airframe, model.reference());
            referenceStall = reference.stall(question.pack());
        }

        FindResult result(AirfoilLibrary airfoils) {
            referenceStall.ifPresent(stall -> notes.addAll(balance(stall).notes()));
            Optional<SetUpFound> setUp = question.setUp().map(this::setUp);
            SetUp rolling = setUp.map(s -> s.found().trial().setUp()).orElse(model.reference());
            Optional<RollFound> roll = question.roll().map(wanted -> roll(wanted, rolling));
            Optional<HelpFound> help = question.rollHelp().map(h -> rollHelp(h, rolling, roll));
            Optional<TrimFound> trim =
                    question.levelTrim().map(t -> trim(t, t.setUp().orElse(rolling)));
            List<Stick> sticks = new ArrayList<>();
            roll.flatMap(RollFound::found).map(FoundThrow::stick).ifPresent(sticks::add);
            help.flatMap(this::helpingStick).ifPresent(sticks::add);
            PoweredFind power = new PoweredFind(airframe, bands, question);
            Optional<TakeOffFound> takeOff = question.powered().takeOffWithin().map(power::takeOff);
            Optional<SetUp> takingOff = takeOff.flatMap(TakeOffFound::proposed);
            Optional<ClimbFound> climb = question.powered().climb().map(c -> power.climb(c, takingOff.orElse(rolling)));
            boolean flies = setUp.isPresent() || !sticks.isEmpty() || takingOff.isPresent();
            Optional<LoopFound> loop = question.tightestLoop().map(l -> loop(l, rolling));
            loop.flatMap(l -> loops(l.in()).stick(l, loopName(flies))).ifPresent(sticks::add);
            Stream<SetUp> found = setUp.stream().map(s -> s.found().trial().setUp());
            Model changed = with(Stream.concat(found, takingOff.stream()), sticks);
            Optional<Comparison> flown = flies
                    ? Optional.of(
                            new ComparisonStudy(sections, bands).compare(changed, airfoils, List.of(question.pack())))
                    : Optional.empty();
            return new FindResult(
                    question,
                    changed,
                    question.pack(),
                    setUp,
                    roll,
                    trim,
                    help,
                    loop,
                    takeOff,
                    climb,
                    sticks,
                    flown,
                    notes);
        }

        private PitchBalance balance(Stall stall) {
            double speed = stall.approachSpeed();
            return PitchBalance.of(reference, question.pack(), stall, reference.descent(question.pack(), stall, speed));
        }

        private Model with(Stream<SetUp> found, List<Stick> sticks) {
            return model.withSetUps(
                            Stream.concat(Stream.of(model.reference()), found).toList())
                    .withSticks(Stream.concat(model.sticks().stream(), sticks.stream())
                            .toList());
        }

        private SetUpFound setUp(SetUpWants wants) {
            FoundSetUp found = new SetUpSearch(airframe, question.pack(), wants, question.name()).find();
            CandidateFlight trial = found.trial();
            String kind = trial.setUp().isClean() ? "clean" : "moved";
            Headline stall = trial.stall()
                    .<Headline>map(s -> bands.around("stallSpeed", s.speed(), s.plateau(), s.onset()))
                    .orElse(new Headline.Unknown("why.no-stall"));
            Optional<Headline> angle = wants.descent()
                    .map(d -> trial.elevator().isPresent()
                            ? bands.around("descentAngle." + kind, trial.angle())
                                    .atMost(Math.PI / 2)
                            : new Headline.Unknown(why(trial)));
            Optional<Headline> change = wants.descent().map(d -> change(trial, d));
            wants.descent().ifPresent(d -> margin(d.speed(), trial));
            return new SetUpFound(found, stall, angle, change, new ThrowBandOf(bands, wants).around(found));
        }

        private static String why(CandidateFlight trial) {
            return switch (trial.fault().orElse(Limit.NO_SOLUTION)) {
                case WING_STALL -> "why.too-slow";
                case TOO_MUCH_DRAG -> "why.too-much-drag";
                case ELEVATOR_TRAVEL -> "why.elevator-short";
                default -> "why.not-found";
            };
        }

        /** A word where the wanted speed is nearer to the stall than usual. */
        private void margin(double speed, CandidateFlight trial) {
            if (trial.stall().isPresent() && speed < Stall.APPROACH * trial.stallSpeed()) {
                notes.add(Message.of(
                        "note.find.near-stall",
                        new Quantity(speed, Dimension.SPEED),
                        new Quantity(Math.rint(100 * speed / trial.stallSpeed()) / 100, Dimension.NUMBER)));
            }
        }

        private Headline change(CandidateFlight trial, WantedDescent wanted) {
            Optional<Double> there = referenceStall
                    .flatMap(s -> reference
                            .descent(question.pack(), s, wanted.speed())
                            .steady())
                    .map(Attitude::elevator);
            if (trial.elevator().isEmpty()) {
                return new Headline.Unknown(why(trial));
            }
            return there.<Headline>map(
                            e -> bands.around("elevatorChange", trial.elevator().get() - e))
                    .orElse(new Headline.Unknown("why.reference-unknown"));
        }

        private RollFound roll(WantedRoll wanted, SetUp in) {
            RollThrow rolling = new RollThrow(airframe, question.pack(), groups, in, wanted.speed());
            Optional<FoundThrow> found = rolling.find(wanted.rate(), question.name());
            Headline rate = found.<Headline>map(f -> bands.around("rollRate", f.rate()))
                    .orElseGet(() -> rolling.descent()
                            .filter(d -> d.steady().isEmpty())
                            .map(SetUpAnswer::why)
                            .orElse(new Headline.Unknown("why.no-roll")));
            found.flatMap(FoundThrow::letsGo)
                    .filter(v -> v > wanted.speed())
                    .ifPresent(v -> notes.add(Message.of("note.find.lets-go", new Quantity(v, Dimension.SPEED))));
            return new RollFound(in, found, rate);
        }

        private HelpFound rollHelp(FindQuestion.RollHelpWanted wanted, SetUp in, Optional<RollFound> roll) {
            Stick.Roll stick = roll.flatMap(RollFound::found)
                    .map(FoundThrow::stick)
                    .orElseGet(() -> rollSticks().get(0));
            Optional<Double> speed = wanted.speed().or(() -> comeInAt(in));
            Optional<RollHelp> help = speed.flatMap(v -> helping(in, stick).at(v));
            return new HelpFound(
                    in,
                    stick,
                    help,
                    rate(help.map(h -> h.points().get(0).rate())),
                    rate(help.map(h -> h.best().rate())));
        }

        private Headline rate(Optional<Double> rate) {
            return rate.<Headline>map(r -> bands.around("rollRate", r)).orElse(new Headline.Unknown("why.no-roll"));
        }

        private RollHelpSearch helping(SetUp in, Stick.Roll stick) {
            return new RollHelpSearch(airframe, question.pack(), groups, in, stick);
        }

        private Optional<Stick.Roll> helpingStick(HelpFound found) {
            return found.help()
                    .filter(h -> h.best().size() > 0)
                    .map(h -> helping(found.in(), found.helped()).with(h.best(), helpedName()));
        }

        /** The name asked for; with a mark where something else has it. */
        private String helpedName() {
            return question.roll().isEmpty() && question.setUp().isEmpty()
                    ? question.name()
                    : question.name() + " with flaps";
        }

        private String loopName(boolean taken) {
            return taken ? question.name() + " loop" : question.name();
        }

        private LoopFind loops(SetUp in) {
            return new LoopFind(airframe, bands, question, in);
        }

        private LoopFound loop(FindQuestion.LoopWanted wanted, SetUp in) {
            List<Double> entries = referenceStall.map(PullStudy::entries).orElse(List.of());
            return loops(in).at(wanted.speed().or(() -> entries.stream().skip(1).findFirst()), entries);
        }

        private List<Stick.Roll> rollSticks() {
            return model.sticks().stream()
                    .filter(Stick.Roll.class::isInstance)
                    .map(Stick.Roll.class::cast)
                    .toList();
        }

        private Optional<Double> comeInAt(SetUp in) {
            return new Flight(airframe, in).stall(question.pack()).map(s -> s.approachSpeed());
        }

        private TrimFound trim(FindQuestion.LevelTrim wanted, SetUp to) {
            Optional<Double> stall =
                    new Flight(airframe, to).stall(question.pack()).map(Stall::speed);
            double slowest =
                    Math.max(stall.orElse(0.0), referenceStall.map(Stall::speed).orElse(0.0));
            Optional<Double> speed = wanted.speed().or(() -> stall.map(s -> Stall.APPROACH * s));
            if (speed.isEmpty()) {
                return new TrimFound(
                        model.reference(),
                        to,
                        Optional.empty(),
                        new Headline.Unknown("why.no-stall"),
                        Optional.empty());
            }
            double flown = Math.max(speed.get(), SLOWEST_MIX * slowest);
            Optional<Message> slow = flown > speed.get()
                    ? Optional.of(Message.of(
                            "note.find.mix-too-slow",
                            new Quantity(speed.get(), Dimension.SPEED),
                            new Quantity(slowest, Dimension.SPEED),
                            new Quantity(flown, Dimension.SPEED)))
                    : Optional.empty();
            Optional<MixCurve> whole = curve(to, flown, wanted.points());
            if (whole.isPresent()) {
                return trimFound(to, whole, slow);
            }
            for (double share : PART_WAY) {
                SetUp part = partOf(to, share);
                Optional<MixCurve> curve = curve(part, flown, wanted.points());
                if (curve.isPresent()) {
                    Message note = Message.of(
                            "note.find.mix-part",
                            new Quantity(share, Dimension.FRACTION),
                            new Quantity(flown, Dimension.SPEED));
                    return trimFound(part, curve, Optional.of(note));
                }
            }
            return trimFound(to, Optional.empty(), Optional.of(Message.of("note.find.mix-none")));
        }

        private TrimFound trimFound(SetUp to, Optional<MixCurve> curve, Optional<Message> shortOf) {
            Headline whole = curve.map(
                            c -> c.points().get(c.points().size() - 1).elevator())
                    .<Headline>map(e -> bands.around("elevatorChange", e))
                    .orElse(new Headline.Unknown("why.elevator-short"));
            return new TrimFound(model.reference(), to, curve, whole, shortOf);
        }

        private Optional<MixCurve> curve(SetUp to, double speed, Optional<Integer> points) {
            return new MixSearch(airframe, question.pack(), model.reference(), to).at(speed, points);
        }

        private SetUp partOf(SetUp setUp, double share) {
            Map<String, Double> part = new LinkedHashMap<>();
            setUp.deflections().forEach((surface, angle) -> part.put(surface, share * angle));
            return new SetUp(setUp.name(), part, 0);
        }
    }
}
