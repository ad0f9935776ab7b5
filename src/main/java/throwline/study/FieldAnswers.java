package throwline.study;

import static throwline.study.FlightQuantity.FLARE_HEIGHT;
import static throwline.study.FlightQuantity.FLOAT;
import static throwline.study.FlightQuantity.GUST_LIMIT;
import static throwline.study.FlightQuantity.LANDING_DISTANCE;
import static throwline.study.FlightQuantity.LANDING_DISTANCE_IN_WIND;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import throwline.flight.Attitude;
import throwline.flight.Descent;
import throwline.flight.Flight;
import throwline.flight.GroundHeights;
import throwline.flight.GustMargin;
import throwline.flight.Landing;
import throwline.flight.LandingSimulator;
import throwline.flight.PathPoint;
import throwline.flight.Stall;
import throwline.model.Field;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.study.FieldAnswer.FitFor;
import throwline.study.FieldAnswer.Legs;
import throwline.study.FieldAnswer.Margins;
import throwline.units.Dimension;
import throwline.units.Quantity;
import throwline.words.Message;

/** Landings and gust margins of one set-up, with their bands and notes. */
final class FieldAnswers {

    /** A model still sinking faster than this at the end of its round-out hits the ground (PRACTICE: a drop of 3 cm). */
    private static final double HARD = 0.8;

    /** Headwind over approach speed beyond which a warning is due (PRACTICE, methods manual 18.3). */
    private static final double HEADWIND = 0.6;

    /** Gusts from below that the words for the wind begin at, m/s (PRACTICE; the first: methods manual 18.3). */
    private static final double LIGHT = 2;

    private static final double MODERATE = 3;
    private static final double FRESH = 4.5;

    private static final Headline NOT_FOUND = new Headline.Unknown("why.not-found");

    private final GroundHeights ladder;
    private final Field field;
    private final boolean clean;
    private final Bands bands;

    FieldAnswers(GroundHeights ladder, Field field, SetUp setUp, Bands bands) {
        this.ladder = ladder;
        this.field = field;
        this.clean = setUp.isClean();
        this.bands = bands;
    }

    /** The answer at the approach. */
    FieldAnswer of(Flight flight, Pack pack, Stall stall, Descent approach) {
        if (approach.steady().isEmpty()) {
            return FieldAnswer.none();
        }
        Attitude attitude = approach.steady().get();
        Optional<Margins> margins = flight.gustMargin(pack, attitude).map(g -> margins(g, stall, attitude));
        LandingSimulator lander = flight.lander(ladder, pack, stall, attitude);
        Optional<Landing> calm = lander.converged() ? lander.land(0) : Optional.empty();
        Optional<Landing> windy = calm.isPresent() && field.wind() > 0 ? lander.land(field.wind()) : Optional.empty();
        return new FieldAnswer(
                calm.map(landing -> legs(lander, landing, 0)),
                windy.map(landing -> legs(lander, landing, field.wind())),
                calm.map(lander::elevator),
                margins);
    }

    /** The headline numbers of an answer at this approach. */
    Map<FlightQuantity, Headline> numbers(FieldAnswer answer, Attitude approach) {
        Map<FlightQuantity, Headline> numbers = new EnumMap<>(FlightQuantity.class);
        numbers.put(
                GUST_LIMIT,
                answer.margins()
                        .<Headline>map(m -> bands.around(GUST_LIMIT.band(clean), m.gust(), m.firstGust(), m.gust()))
                        .orElse(NOT_FOUND));
        numbers.put(FLARE_HEIGHT, still(answer, FLARE_HEIGHT, Legs::roundOutHeight));
        numbers.put(FLOAT, still(answer, FLOAT, Legs::floated));
        numbers.put(LANDING_DISTANCE, still(answer, LANDING_DISTANCE, Legs::total));
        numbers.put(LANDING_DISTANCE_IN_WIND, inWind(answer, approach));
        return numbers;
    }

    private Headline still(FieldAnswer answer, FlightQuantity quantity, ToDoubleFunction<Legs> value) {
        return answer.stillAir()
                .<Headline>map(legs -> positive(bands.around(quantity.band(clean), value.applyAsDouble(legs))))
                .orElse(NOT_FOUND);
    }

    /** What is not known of the airspeed counts for more against the wind: it is all of the speed over the ground that errs. */
    private Headline inWind(FieldAnswer answer, Attitude approach) {
        if (answer.stillAir().isEmpty() || field.wind() <= 0) {
            return still(answer, LANDING_DISTANCE_IN_WIND, Legs::total);
        }
        double ahead = approach.speed() * Math.cos(approach.descentAngle());
        return answer.inWind()
                .<Headline>map(legs -> positive(bands.around(LANDING_DISTANCE_IN_WIND.band(clean), legs.total())
                        .wider(ahead / (ahead - field.wind()))))
                .orElseGet(() -> new Headline.Unknown("why.wind-faster"));
    }

    /** Heights and distances do not reach below zero. */
    private static Headline positive(Headline.Known known) {
        return new Headline.Known(known.value(), Math.max(0, known.low()), known.high(), known.basis(), known.shared());
    }

    private static Legs legs(LandingSimulator lander, Landing landing, double wind) {
        return new Legs(
                wind,
                landing.approach(),
                landing.clearsObstacle(),
                landing.roundOutHeight(),
                landing.roundOutDistance(),
                landing.levelSpeed(),
                landing.sink(),
                landing.floated(),
                lander.floatedWithoutGround(landing),
                landing.touchdownSpeed(),
                landing.roll(),
                landing.windLost(),
                lander.glideLow(true),
                lander.glideLow(false),
                landing.takesAllLift(),
                landing.stalled(),
                landing.way().stream()
                        .map(spot -> new PathPoint(spot.along(), spot.height()))
                        .toList());
    }

    private static Margins margins(GustMargin gust, Stall stall, Attitude approach) {
        return new Margins(
                approach.speed() - stall.speed(),
                gust.angle(),
                gust.gust(),
                gust.firstGust(),
                gust.usualLoad(),
                HEADWIND * approach.speed(),
                fitFor(gust.gust()));
    }

    private static FitFor fitFor(double gust) {
        if (gust < LIGHT) {
            return FitFor.CALM;
        }
        return gust < MODERATE ? FitFor.LIGHT_WIND : gust < FRESH ? FitFor.MODERATE_WIND : FitFor.FRESH_WIND;
    }

    /** What a flyer should know about it. */
    List<Message> notes(FieldAnswer answer) {
        List<Message> notes = new ArrayList<>();
        answer.stillAir().ifPresent(legs -> {
            if (field.obstacle() > 0 && !answer.inWind().orElse(legs).clearsObstacle()) {
                notes.add(Message.of("note.flare-above-obstacle"));
            }
            Optional<Message> calm = roundOutNote(legs, false);
            calm.or(() -> answer.inWind().flatMap(windy -> roundOutNote(windy, true)))
                    .ifPresent(notes::add);
            if (ladder.isHeldHigher()) {
                notes.add(Message.of("note.ground-held"));
            }
        });
        answer.elevator().ifPresent(e -> {
            if (e.left() <= 0 && e.touchdown() <= e.roundOut()) {
                notes.add(Message.of("note.flare-elevator-short"));
            } else if (e.left() <= 0) {
                notes.add(Message.of("note.flare-elevator-round"));
            } else if (e.endsFirst()) {
                notes.add(Message.of("note.flare-elevator-first"));
            }
        });
        answer.margins().ifPresent(m -> {
            if (m.fitFor() == FitFor.CALM) {
                notes.add(Message.of("note.gusts-calm", new Quantity(LIGHT, Dimension.SPEED)));
            }
            if (field.wind() > m.headwindLimit()) {
                notes.add(Message.of("note.headwind", new Quantity(m.headwindLimit(), Dimension.SPEED)));
            }
        });
        return notes;
    }

    /** The worst that can be said of a round-out, in still air or against the field's wind. */
    private static Optional<Message> roundOutNote(Legs legs, boolean windy) {
        if (legs.stalled()) {
            return Optional.of(Message.of(windy ? "note.flare-stalls-wind" : "note.flare-stalls"));
        }
        if (legs.sink() > HARD) {
            Quantity sink = new Quantity(legs.sink(), Dimension.SPEED);
            return Optional.of(Message.of(windy ? "note.flare-sinks-wind" : "note.flare-sinks", sink));
        }
        return legs.takesAllLift()
                ? Optional.of(Message.of(windy ? "note.flare-all-lift-wind" : "note.flare-all-lift"))
                : Optional.empty();
    }
}
