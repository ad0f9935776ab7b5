package throwline.report.data;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.report.BenchThrow;
import throwline.report.Sentences;
import throwline.sizing.FoundClimb;
import throwline.sizing.FoundSetUp;
import throwline.sizing.FoundTakeOff;
import throwline.sizing.FoundThrow;
import throwline.sizing.LoopHelp;
import throwline.sizing.MixCurve;
import throwline.sizing.RollHelp;
import throwline.study.Comparison;
import throwline.study.FindResult;
import throwline.study.FindResult.ClimbFound;
import throwline.study.FindResult.HelpFound;
import throwline.study.FindResult.LoopFound;
import throwline.study.FindResult.RollFound;
import throwline.study.FindResult.SetUpFound;
import throwline.study.FindResult.TakeOffFound;
import throwline.study.FindResult.ThrowBand;
import throwline.study.FindResult.TrimFound;
import throwline.study.Learnt;
import throwline.units.Dimension;
import throwline.units.Key;
import throwline.units.Measure;
import throwline.words.Message;

/** Throws that were found as JSON, format {@code find/1}: SI units, angles in degrees, trailing edge down positive. */
public final class FindJson {

    private final Sentences sentences;

    /** A writer with these words. */
    public FindJson(Sentences sentences) {
        this.sentences = sentences;
    }

    /** The document. */
    public String write(FindResult result) {
        return write(result, Optional.empty());
    }

    /** The same with what flights told. */
    public String write(FindResult result, Optional<Learnt> learnt) {
        RecordWriter json = new RecordWriter(sentences);
        Answers answers = new Answers(json, result.model());
        List<Message> warnings = new ArrayList<>(result.notes());
        warnings.add(Message.of("note.assumed-bands"));
        warnings.addAll(result.beyondMeasured());
        json.object(() -> {
            json.write("format", "find/1");
            json.write("model", result.model().name());
            LearnJson.flights(json, learnt);
            json.write("pack", result.pack());
            json.write("met", result.isMet());
            json.object("setup", result.setUp(), answers::setUp);
            json.object("roll", result.roll(), answers::roll);
            json.object("rollHelp", result.rollHelp(), answers::help);
            json.object("tightestLoop", result.loop(), answers::loop);
            json.object("takeOff", result.takeOff(), answers::takeOff);
            json.object("climb", result.climb(), answers::climb);
            json.object("levelTrim", result.levelTrim(), answers::trim);
            json.write("flown", result.flown().map(FindJson::setUps).orElse(List.of()));
            json.write("warnings", warnings);
        });
        return json.toString();
    }

    private static List<? extends Record> setUps(Comparison flown) {
        return flown.packs().get(0).setUps();
    }

    /** Answers to single wants, as keys of an object that is open. */
    private record Answers(RecordWriter json, Model model) {

        private record Band(
                FoundSetUp.Moved surface, @Key(Key.INLINE) ThrowBand band) {}

        private record Flap(
                @Measure(Dimension.ANGLE) double low,
                @Measure(Dimension.ANGLE) double high,
                boolean highOpen) {}

        private record Place(
                String name, @Measure(Dimension.ANGLE) double angle) {}

        private record RollThrow(
                String surface,
                @Measure(Dimension.ANGLE) double up,
                double upDistance,
                @Measure(Dimension.ANGLE) double down,
                double downDistance) {}

        private record MixPoint(
                double lever,
                @Measure(Dimension.ANGLE) double elevator,
                double distance,
                double travelShare,
                @Measure(Dimension.ANGLE) double firstFlight) {}

        void setUp(SetUpFound answer) {
            FoundSetUp found = answer.found();
            SetUp setUp = found.trial().setUp();
            json.write("name", setUp);
            json.write("met", found.met());
            json.write("why", found.why());
            json.write(
                    "surfaces",
                    model.wing().surfaces().stream()
                            .map(surface -> BenchThrow.of(model, surface, setUp.deflection(surface.name())))
                            .toList());
            json.write("stallSpeed", answer.stallSpeed());
            json.write("descentAngle", answer.descentAngle(), Dimension.ANGLE);
            json.write("elevatorChange", answer.elevatorChange(), Dimension.ANGLE);
            json.write("oneDegree", found.oneDegree());
            json.write("throwBand", answer.throwBand().map(band -> new Band(found.lineOf(), band)));
            json.write("least", found.least());
            json.write("most", found.most());
            json.write("stoppedBy", found.stoppedBy());
        }

        void roll(RollFound answer) {
            Optional<FoundThrow> found = answer.found();
            json.write("setup", answer.in());
            json.write("met", found.map(FoundThrow::met).orElse(false));
            json.write("why", found.map(FoundThrow::why).orElse(List.of()));
            json.write(
                    "throws",
                    found.stream()
                            .flatMap(f -> f.stick().throwsBySurface().entrySet().stream())
                            .flatMap(this::rollThrow)
                            .toList());
            json.write("rate", answer.rate(), Dimension.ANGULAR_RATE);
            json.write("rateAtStops", found.map(FoundThrow::rateAtStops), Dimension.ANGULAR_RATE);
            json.write("oneDegree", found.map(FoundThrow::perDegree), Dimension.ANGULAR_RATE);
            json.write("yawing", found.map(FoundThrow::yawing));
        }

        private Stream<RollThrow> rollThrow(Map.Entry<String, Stick.Throws> moved) {
            Stick.Throws both = moved.getValue();
            return model.wing().surface(moved.getKey()).stream()
                    .map(surface -> new RollThrow(
                            surface.name(),
                            both.up(),
                            -BenchThrow.of(model, surface, -both.up()).distance(),
                            both.down(),
                            BenchThrow.of(model, surface, both.down()).distance()));
        }

        void help(HelpFound answer) {
            Optional<RollHelp> help = answer.help();
            json.write("setup", answer.in());
            json.write("stick", answer.helped());
            json.write("speed", help.map(RollHelp::speed));
            json.write("without", answer.without(), Dimension.ANGULAR_RATE);
            json.write("with", answer.with(), Dimension.ANGULAR_RATE);
            json.write("stoppedBy", help.map(RollHelp::stoppedBy).stream().toList());
            json.write("points", help.map(RollHelp::points).orElse(List.of()));
        }

        void loop(LoopFound answer) {
            Optional<LoopHelp> help = answer.help();
            json.write("setup", answer.in());
            json.write("speed", help.map(LoopHelp::speed));
            json.write("without", answer.without());
            json.write("radius", answer.radius());
            json.write("getsRound", answer.round());
            json.write("stoppedBy", help.map(LoopHelp::stoppedBy).orElse(List.of()));
            help.ifPresent(json::components);
        }

        void takeOff(TakeOffFound answer) {
            Optional<FoundTakeOff> found = answer.found();
            json.write("met", found.map(FoundTakeOff::met).orElse(false));
            json.write("why", found.map(FoundTakeOff::why).orElse(List.of()));
            json.write("setup", answer.proposed());
            json.write(
                    "surfaces",
                    found.stream()
                            .flatMap(f -> model.wing().surfaces().stream()
                                    .map(s -> new Place(
                                            s.name(), f.found().setUp().deflection(s.name()))))
                            .toList());
            json.write("run", answer.run());
            json.write("distance", answer.distance());
            json.write("runWithoutFlap", answer.clean());
            json.write("flap", answer.throwBand().map(b -> new Flap(b.low(), b.high(), b.highOpen())));
            json.write("line", found.map(FoundTakeOff::line).orElse(List.of()));
        }

        void climb(ClimbFound answer) {
            FoundClimb found = answer.found();
            json.write("setup", found.in());
            json.write("met", found.met());
            json.write("why", found.why());
            json.write("rate", answer.rate());
            json.write("angle", answer.angle(), Dimension.ANGLE);
            json.write("speed", found.full().map(FoundClimb.Climb::speed));
            json.write("throttle", found.enough().map(FoundClimb.Climb::throttle));
            json.write("throttleSpeed", found.enough().map(FoundClimb.Climb::speed));
            json.write("mostFlap", found.mostFlap(), Dimension.ANGLE);
            json.write("mostFlapIsTheEnd", found.flapsEnd());
            json.write("best", found.best());
        }

        void trim(TrimFound answer) {
            Optional<MixCurve> curve = answer.curve();
            json.write("from", answer.from());
            json.write("to", answer.to());
            json.write("speed", curve.map(MixCurve::speed));
            json.write("whole", answer.whole(), Dimension.ANGLE);
            json.write(
                    "points",
                    curve.map(MixCurve::points).orElse(List.of()).stream()
                            .map(point -> mixPoint(answer, point))
                            .toList());
            json.write("straightError", curve.map(MixCurve::straightError), Dimension.ANGLE);
            json.write("otherSpeeds", curve.map(MixCurve::otherSpeeds).orElse(List.of()));
            json.write("shortOf", answer.shortOf());
        }

        private MixPoint mixPoint(TrimFound answer, MixCurve.Point point) {
            BenchThrow bench = BenchThrow.ofElevator(model, "elevator", point.elevator());
            return new MixPoint(point.lever(), bench.angle(), bench.distance(), bench.share(), answer.start(point));
        }
    }
}
