package throwline.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import throwline.flight.Airframe;
import throwline.flight.Attitude;
import throwline.flight.Descent;
import throwline.flight.ElevatorBreakdown;
import throwline.flight.Flight;
import throwline.flight.GroundHeights;
import throwline.flight.Roll;
import throwline.flight.Stability;
import throwline.flight.Stall;
import throwline.flight.SteadyDescent;
import throwline.flight.StickStall;
import throwline.flight.TurnStall;
import throwline.liftingline.SpanGrid;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.Propeller;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Surface;
import throwline.section.AirfoilLibrary;
import throwline.section.SectionAerodynamics;
import throwline.study.CruiseTrimStudy.Rigged;
import throwline.study.FlyResult.Balance;
import throwline.study.FlyResult.Descents;
import throwline.study.FlyResult.OtherPropeller;
import throwline.study.FlyResult.RollDetail;
import throwline.study.FlyResult.RollPoint;
import throwline.study.FlyResult.Turn;
import throwline.words.Message;

/** "How does this one set-up fly, in depth?" */
public final class FlyStudy {

    private static final double[] BANKS = {Math.toRadians(30), Math.toRadians(45), Math.toRadians(60)};

    /** Cruise speed over clean stall speed (PRACTICE). */
    private static final double CRUISE = 2;

    /** Speed limit for the steepest descent over the stall speed, where the user gives none (PRACTICE). */
    private static final double LIMIT = 1.6;

    private static final int ROLL_SPEEDS = 8;
    private static final double FASTEST_ROLL = 2.6;

    private final SectionAerodynamics sections;
    private final Bands bands;

    /**
     * @param sections makes section curves
     * @param bands the bands of headline numbers
     */
    public FlyStudy(SectionAerodynamics sections, Bands bands) {
        this.sections = sections;
        this.bands = bands;
    }

    /**
     * Flies one set-up.
     *
     * @param model the model
     * @param airfoils where its airfoils are found; every name of the model must be there
     * @param pack a pack of the model
     * @param setUp a set-up of the model
     * @param question what was said besides
     */
    public FlyResult fly(Model model, AirfoilLibrary airfoils, Pack pack, SetUp setUp, FlyQuestion question) {
        return fly(model, airfoils, pack, setUp, question, UnaryOperator.identity());
    }

    /**
     * Flies one set-up and puts its numbers right.
     *
     * @param afterFlights what flights of the model do to its numbers
     */
    public FlyResult fly(
            Model model,
            AirfoilLibrary airfoils,
            Pack pack,
            SetUp setUp,
            FlyQuestion question,
            UnaryOperator<SetUpResult> afterFlights) {
        Rigged rigged = new CruiseTrimStudy(sections, bands).rigged(model, airfoils);
        Airframe airframe = new Airframe(rigged.model(), airfoils, sections);
        return new One(airframe, airfoils, pack, setUp, rigged.notes()).result(question, afterFlights);
    }

    /** One set-up with one pack. */
    private final class One {
        private final Airframe airframe;
        private final AirfoilLibrary airfoils;
        private final Model model;
        private final Pack pack;
        private final SetUp setUp;
        private final Flight flight;
        private final Flight reference;
        private final boolean isReference;
        private final List<Message> known;

        One(Airframe airframe, AirfoilLibrary airfoils, Pack pack, SetUp setUp, List<Message> known) {
            this.known = known;
            this.airframe = airframe;
            this.airfoils = airfoils;
            this.pack = pack;
            this.setUp = setUp;
            model = airframe.model();
            flight = new Flight(airframe, setUp);
            isReference = model.isReference(setUp);
            reference = isReference ? flight : new Flight(airframe, model.reference());
        }

        FlyResult result(FlyQuestion question, UnaryOperator<SetUpResult> afterFlights) {
            SetUpAnswer answer = new SetUpAnswer(model, setUp, bands);
            Optional<Stall> stall = flight.stall(pack);
            Optional<Stall> referenceStall = isReference ? stall : reference.stall(pack);
            if (stall.isEmpty()) {
                SetUpResult glance = answer.withoutStall();
                return FlyResult.withoutStall(model, pack, glance, known);
            }
            double speed = stall.get().approachSpeed();
            Descent approach = flight.descent(pack, stall.get(), speed);
            Optional<Descent> there =
                    isReference ? Optional.of(approach) : referenceStall.map(s -> reference.descent(pack, s, speed));
            GroundHeights ladder = new GroundHeights(airframe);
            SetUpResult own = answer.of(flight, ladder, pack, stall.get(), approach, there);
            LikelyBands likely = LikelyBands.of(
                    new PerturbedRun(airframe, airfoils, sections, pack, setUp, stall),
                    new InputUncertainties(model, airfoils).in(setUp),
                    own);
            SetUpResult glance = afterFlights.apply(likely.widened(own));
            return new FlyResult(
                    model,
                    pack,
                    glance,
                    approach.steady().map(a -> balance(stall.get(), referenceStall, a, there, glance)),
                    turns(stall.get(), glance),
                    rolls(stall.get(), approach, glance),
                    approach.steady().map(a -> descents(stall.get(), a, question.speedLimit())),
                    rollSweep(stall.get()),
                    own.power().level(),
                    handling(ladder, glance, stall.get(), referenceStall, question),
                    new BlowBackStudy(flight, setUp, pack, stall.get(), bands)
                            .answer(glance.number(FlightQuantity.FLAP_SPEED_LIMIT)),
                    likely.matters(glance),
                    Stream.of(
                                    glance.notes(),
                                    DriveReview.unknown(model, pack),
                                    known,
                                    DriveReview.of(
                                            model, List.of(pack), airframe.air().density(), airframe::drive))
                            .flatMap(List::stream)
                            .toList());
        }

        private Handling handling(
                GroundHeights ladder,
                SetUpResult glance,
                Stall stall,
                Optional<Stall> referenceStall,
                FlyQuestion question) {
            List<Double> speeds = question.loopSpeeds().isEmpty()
                    ? PullStudy.entries(referenceStall.orElse(stall))
                    : question.loopSpeeds();
            PullStudy.Pulls pulls = new PullStudy(flight, pack, setUp, stall, bands).at(speeds);
            MoveStudy.Found moves = moves(stall, referenceStall, question);
            return new Handling(
                    new RankingStudy(airframe, pack, bands).ranking(ladder, glance),
                    pulls.loops(),
                    pulls.gains(),
                    pulls.none(),
                    moves.moves(),
                    moves.why());
        }

        private MoveStudy.Found moves(Stall stall, Optional<Stall> referenceStall, FlyQuestion question) {
            if (isReference) {
                return new MoveStudy.Found(
                        Optional.empty(),
                        question.asksForMoves()
                                ? Optional.of(Message.of("note.move.reference", setUp.name()))
                                : Optional.empty());
            }
            return referenceStall
                    .map(s -> new MoveStudy(
                                    airframe,
                                    pack,
                                    new MoveStudy.Side(reference, model.reference(), s),
                                    new MoveStudy.Side(flight, setUp, stall))
                            .moves(question))
                    .orElseGet(() -> new MoveStudy.Found(
                            Optional.empty(),
                            Optional.of(Message.of(
                                    "note.move.no-stall", model.reference().name()))));
        }

        private Balance balance(
                Stall stall,
                Optional<Stall> referenceStall,
                Attitude attitude,
                Optional<Descent> there,
                SetUpResult glance) {
            Optional<Stability> stability = flight.stability(pack, attitude);
            double cruise = CRUISE * referenceStall.orElse(stall).speed();
            Descent atCruise = flight.descent(pack, stall, cruise);
            Optional<ElevatorBreakdown> why = isReference
                    ? Optional.empty()
                    : there.flatMap(Descent::steady).map(r -> reference.sharesTo(attitude, r, pack));
            // With a motor a cruise is level flight at the throttle of the file.
            boolean level = glance.number(FlightQuantity.CRUISE_ELEVATOR) instanceof Headline.Known;
            return new Balance(
                    stability.map(Stability::margin),
                    stability.map(Stability::neutralPoint),
                    attitude.tailMargin(),
                    level && glance.number(FlightQuantity.CRUISE_SPEED) instanceof Headline.Known known
                            ? known.value()
                            : cruise,
                    level
                            ? glance.number(FlightQuantity.CRUISE_ELEVATOR)
                            : atCruise.steady()
                                    .<Headline>map(a -> bands.around("elevator", a.elevator()))
                                    .orElseGet(() -> SetUpAnswer.why(atCruise)),
                    why);
        }

        private static Headline slowest(Headline straight, Optional<Double> factor) {
            return straight instanceof Headline.Known known
                    ? factor.<Headline>map(known::times).orElse(new Headline.Unknown("why.not-found"))
                    : straight;
        }

        private List<Turn> turns(Stall stall, SetUpResult glance) {
            List<Turn> turns = new ArrayList<>();
            for (double bank : BANKS) {
                Optional<TurnStall> turn = flight.turn(pack, stall, bank);
                turns.add(new Turn(
                        bank,
                        slowest(glance.stallSpeed(), turn.map(t -> t.speed() / stall.speed())),
                        turn.map(TurnStall::limitedByElevator).orElse(false)));
            }
            return turns;
        }

        private List<RollDetail> rolls(Stall stall, Descent approach, SetUpResult glance) {
            List<RollDetail> details = new ArrayList<>();
            for (Stick stick : model.sticks()) {
                if (stick instanceof Stick.Roll roll && roll.worksIn(setUp)) {
                    Headline rate = glance.rollRates().get(details.size()).rate();
                    details.add(detail(roll, stall, approach, rate));
                }
            }
            return details;
        }

        private RollDetail detail(Stick.Roll stick, Stall stall, Descent approach, Headline rate) {
            Optional<Roll> steady = approach.steady().flatMap(a -> flight.roll(stick, pack, a));
            Optional<StickStall> lettingGo = flight.lettingGo(stick, pack, stall);
            SpanGrid grid = airframe.strips().grid();
            return new RollDetail(
                    stick.name(),
                    rate,
                    steady.map(Roll::timeToNinety),
                    steady.map(Roll::yawing),
                    flight.rolling(stick).atItsStop(),
                    lettingGo.map(StickStall::speed),
                    lettingGo.map(g -> 2 * grid.control(g.strip()) / grid.span()),
                    approach.steady().flatMap(a -> withOneSide(stick, a)));
        }

        /** The slower way of a roll with half of its outermost surface dead. */
        private Optional<Double> withOneSide(Stick.Roll stick, Attitude approach) {
            Optional<Surface> outermost = model.wing().surfaces().stream()
                    .filter(surface -> stick.throwsBySurface().containsKey(surface.name()))
                    .max(Comparator.comparingDouble(Surface::to));
            List<Double> rates = Stream.of(-1, 1)
                    .flatMap(
                            side -> outermost.flatMap(s -> flight.rollWithout(stick, s, side, pack, approach)).stream())
                    .map(Roll::rate)
                    .toList();
            return rates.size() == 2 ? rates.stream().min(Comparator.naturalOrder()) : Optional.empty();
        }

        private Descents descents(Stall stall, Attitude approach, Optional<Double> speedLimit) {
            double limit = speedLimit.orElse(LIMIT * stall.speed());
            Optional<Attitude> steepest = Stream.of(
                            Optional.of(approach),
                            Optional.of(stall.attitude()),
                            flight.descent(pack, stall, limit).steady())
                    .flatMap(Optional::stream)
                    .filter(a -> a.speed() <= limit)
                    .max(Comparator.comparing(Attitude::descentAngle));
            double wind = model.field().wind();
            boolean advances = approach.speed() * Math.cos(approach.descentAngle()) > wind;
            return new Descents(
                    wind,
                    advances
                            ? Optional.of(SteadyDescent.groundAngle(approach.speed(), approach.descentAngle(), wind))
                            : Optional.empty(),
                    limit,
                    steepest.map(Attitude::descentAngle),
                    steepest.map(Attitude::speed),
                    model.propeller().map(p -> propellers(p, stall, approach)).orElse(List.of()));
        }

        private List<OtherPropeller> propellers(Propeller propeller, Stall stall, Attitude approach) {
            return Arrays.stream(Propeller.Shut.values())
                    .filter(shut -> shut != propeller.shut())
                    .map(shut -> {
                        Airframe other = new Airframe(model.with(propeller.doing(shut)), airfoils, sections);
                        Descent descent = new Flight(other, setUp).descent(pack, stall, approach.speed());
                        String kind = setUp.isClean() ? "clean" : "moved";
                        return new OtherPropeller(
                                shut,
                                descent.steady()
                                        .<Headline>map(a -> bands.around("descentAngle." + kind, a.descentAngle()))
                                        .orElseGet(() -> SetUpAnswer.why(descent)));
                    })
                    .toList();
        }

        private List<RollPoint> rollSweep(Stall stall) {
            Optional<Stick.Roll> first = model.sticks().stream()
                    .filter(s -> s instanceof Stick.Roll && s.worksIn(setUp))
                    .map(s -> (Stick.Roll) s)
                    .findFirst();
            if (first.isEmpty()) {
                return List.of();
            }
            List<Double> speeds = IntStream.range(0, ROLL_SPEEDS)
                    .mapToObj(k -> stall.speed() * (1.05 + (FASTEST_ROLL - 1.05) * k / (ROLL_SPEEDS - 1)))
                    .toList();
            return flight.descents(pack, stall, speeds).stream()
                    .flatMap(descent -> descent.steady().stream())
                    .flatMap(a -> flight.roll(first.get(), pack, a).stream()
                            .map(roll -> new RollPoint(a.speed(), roll.rate())))
                    .toList();
        }
    }
}
