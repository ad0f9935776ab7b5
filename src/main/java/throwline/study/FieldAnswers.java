package throwline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.flight.Attitude;
import throwline.flight.Descent;
import throwline.flight.FlareElevator;
import throwline.flight.Flight;
import throwline.flight.GroundHeights;
import throwline.flight.GustMargin;
import throwline.flight.Landing;
import throwline.flight.LandingSimulator;
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

    private final GroundHeights ladder;
    private final Field field;
    private final SetUp setUp;
    private final Bands bands;

    FieldAnswers(GroundHeights ladder, Field field, SetUp setUp, Bands bands) {
        this.ladder = ladder;
        this.field = field;
        this.setUp = setUp;
        this.bands = bands;
    }

    /** The answer at the approach. */
    FieldAnswer of(Flight flight, Pack pack, Stall stall, Descent approach) {
        if (approach.steady().isEmpty()) {
            return FieldAnswer.none(SetUpAnswer.why(approach));
        }
        Attitude attitude = approach.steady().get();
        Optional<GustMargin> gust = flight.gustMargin(pack, attitude);
        Headline limit = gust.<Headline>map(g -> bands.around("gustLimit", g.gust(), g.firstGust(), g.gust()))
                .orElseGet(() -> new Headline.Unknown("why.not-found"));
        Optional<Margins> margins = gust.map(g -> margins(g, stall, attitude));
        LandingSimulator lander = flight.lander(ladder, pack, stall, attitude);
        Optional<Landing> calm = lander.converged() ? lander.land(0) : Optional.empty();
        if (calm.isEmpty()) {
            Headline none = new Headline.Unknown("why.not-found");
            return new FieldAnswer(
                    none, none, limit, none, none, Optional.empty(), Optional.empty(), Optional.empty(), margins);
        }
        Landing still = calm.get();
        Optional<Landing> windy = field.wind() > 0 ? lander.land(field.wind()) : Optional.empty();
        FlareElevator.Demand demand = lander.elevator(still);
        String kind = setUp.isClean() ? "clean" : "moved";
        return new FieldAnswer(
                positive(bands.around("flareHeight." + kind, still.roundOutHeight())),
                positive(bands.around("float." + kind, still.floated())),
                limit,
                positive(bands.around("landing", still.total())),
                inWind(still, windy, attitude),
                Optional.of(legs(lander, still, 0)),
                windy.map(w -> legs(lander, w, field.wind())),
                Optional.of(new FieldAnswer.FlareElevator(
                        demand.roundOut(), demand.touchdown(), demand.left(), demand.endsFirst())),
                margins);
    }

    /** What is not known of the airspeed counts for more against the wind: it is all of the speed over the ground that errs. */
    private Headline inWind(Landing still, Optional<Landing> windy, Attitude approach) {
        if (field.wind() <= 0) {
            return positive(bands.around("landing", still.total()));
        }
        double ahead = approach.speed() * Math.cos(approach.descentAngle());
        return windy.map(landing ->
                        positive(bands.around("landing", landing.total()).wider(ahead / (ahead - field.wind()))))
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
                        .map(spot -> new FieldAnswer.Spot(spot.along(), spot.height()))
                        .toList());
    }

    private static Margins margins(GustMargin gust, Stall stall, Attitude approach) {
        return new Margins(
                approach.speed() - stall.speed(),
                gust.angle(),
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
