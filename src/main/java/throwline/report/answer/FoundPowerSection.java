package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.model.Model;
import throwline.model.Surface;
import throwline.report.document.Block;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Block.Section;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.sizing.FoundClimb;
import throwline.sizing.FoundTakeOff;
import throwline.sizing.PoweredWants.As;
import throwline.sizing.PoweredWants.WantedClimb;
import throwline.sizing.SurfaceGroups;
import throwline.study.FindResult.ClimbFound;
import throwline.study.FindResult.TakeOffFound;
import throwline.study.Headline;

/** Flap for a take-off, throttle and flap for a climb. */
final class FoundPowerSection {

    private final Model model;

    FoundPowerSection(Model model) {
        this.model = model;
    }

    Section takeOff(TakeOffFound answer, double within) {
        boolean met = answer.found().map(FoundTakeOff::met).orElse(false);
        boolean flies = answer.run() instanceof Headline.Known;
        List<Block> blocks = new ArrayList<>();
        if (flies) {
            takingOff(blocks, answer, answer.found().orElseThrow(), within);
        } else {
            blocks.add(Paragraph.of(FindDocument.likely(answer.run(), Value.Kind.DISTANCE)));
        }
        Text wanted = Text.say("find.wanted.take-off", Value.of(within, Value.Kind.RADIUS));
        return Section.of(
                flies ? FindDocument.outcome(wanted, met, true) : Text.say("find.heading.grounded", wanted), blocks);
    }

    private void takingOff(List<Block> blocks, TakeOffFound answer, FoundTakeOff found, double within) {
        if (!found.met()) {
            blocks.add(Paragraph.say("find.stopped", FindDocument.limits(found.why())));
        }
        boolean flap = answer.proposed().isPresent();
        if (flap) {
            blocks.add(FoundSetUpSection.bench(model, found.found().setUp()));
        } else if (found.met()) {
            blocks.add(Paragraph.say("find.take-off.no-flap"));
        }
        if (!found.met() && found.line().size() > 1) {
            blocks.add(Paragraph.say("find.take-off.shortest"));
        }
        Text run = FindDocument.likely(answer.run(), Value.Kind.RADIUS);
        Optional<Headline.Known> clean = answer.clean().known().filter(known -> flap);
        blocks.add(clean.map(
                        known -> Paragraph.say("find.take-off.run", run, Value.of(known.value(), Value.Kind.RADIUS)))
                .orElseGet(() -> Paragraph.say("find.take-off.run.clean", run)));
        clean.filter(known -> answer.run().known().filter(known::tooCloseTo).isPresent())
                .ifPresent(known -> blocks.add(Paragraph.say("find.take-off.close")));
        if (model.field().obstacle() > 0 && answer.distance() instanceof Headline.Known) {
            blocks.add(Paragraph.say(
                    "find.take-off.over",
                    Value.distance(model.field().obstacle()),
                    FindDocument.likely(answer.distance(), Value.Kind.DISTANCE)));
        }
        answer.throwBand().ifPresent(band -> blocks.add(FoundSetUpSection.sure(moved().get(0), band)));
        answer.run()
                .known()
                .filter(known -> found.met() && known.high() > within)
                .ifPresent(known -> blocks.add(Paragraph.say(
                        "find.take-off.unsure",
                        Value.of(within, Value.Kind.RADIUS),
                        Value.of(known.high(), Value.Kind.RADIUS))));
    }

    /** Surfaces that a take-off or a climb moves: the flaps, or the ailerons where there are none. */
    private List<Surface> moved() {
        SurfaceGroups groups = SurfaceGroups.of(model);
        return groups.flapTravel().high() > 0 ? groups.flaps() : groups.ailerons();
    }

    Section climb(ClimbFound answer, WantedClimb wanted) {
        FoundClimb found = answer.found();
        boolean flies = found.full().isPresent();
        List<Block> blocks = new ArrayList<>();
        if (flies) {
            climbing(blocks, answer, wanted);
        } else {
            blocks.add(Paragraph.of(FindDocument.likely(answer.rate(), Value.Kind.SPEED)));
        }
        Text want = Text.say(
                wanted.as() == As.ANGLE ? "find.wanted.climb.angle" : "find.wanted.climb.rate",
                value(wanted.value(), wanted.as()),
                found.in().name());
        return Section.of(FindDocument.outcome(want, found.met(), flies), blocks);
    }

    private static Value value(double climb, As as) {
        return as == As.ANGLE ? Value.angle(climb) : Value.speed(climb);
    }

    private void climbing(List<Block> blocks, ClimbFound answer, WantedClimb wanted) {
        FoundClimb found = answer.found();
        if (!found.met()) {
            blocks.add(Paragraph.say("find.stopped", FindDocument.limits(found.why())));
        }
        found.enough()
                .ifPresent(point -> blocks.add(Paragraph.say(
                        "find.climb.throttle", Value.share(point.throttle()), Value.speed(point.speed()))));
        boolean up = answer.angle().known().filter(PowerRows::isStraightUp).isPresent();
        blocks.add(Paragraph.say(
                up ? "find.climb.full.up" : "find.climb.full",
                FindDocument.likely(answer.rate(), Value.Kind.SPEED),
                FindDocument.likely(answer.angle(), Value.Kind.ANGLE),
                Value.speed(found.full().orElseThrow().speed())));
        Headline asked = wanted.as() == As.ANGLE ? answer.angle() : answer.rate();
        asked.known()
                .filter(known -> found.met() && known.low() < wanted.value())
                .ifPresent(known -> blocks.add(Paragraph.say("find.climb.unsure")));
        if (moved().isEmpty()) {
            return;
        }
        String flaps = moved().get(0).name();
        found.mostFlap()
                .filter(flap -> flap > 0)
                .ifPresent(flap -> blocks.add(
                        found.flapsEnd()
                                ? Paragraph.say("find.climb.flaps.all", flaps)
                                : Paragraph.say("find.climb.flaps", flaps, Value.deflection(flap))));
        if (!found.met()) {
            found.best()
                    .ifPresent(best -> blocks.add(Paragraph.say(
                            "find.climb.best",
                            value(best.climb().worth(wanted), wanted.as()),
                            Text.say("find.surface", flaps, Value.deflection(best.flap())))));
        }
    }
}
