package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import throwline.model.Model;
import throwline.report.document.Block;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Block.Section;
import throwline.report.document.Table;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.sizing.LoopHelp;
import throwline.sizing.LoopHelp.Pull;
import throwline.sizing.SurfaceGroups;
import throwline.study.FindResult.LoopFound;
import throwline.study.FindResult.LoopFound.Round;
import throwline.study.FirstFlightStudy;
import throwline.study.Headline;

/** Section on the flap that goes down with full up elevator. */
final class FoundLoopSection {

    /** More flap than this with full elevator is unusual, rad (PRACTICE, methods manual 17.1). */
    private static final double USUAL = Math.toRadians(10);

    private final Model model;

    FoundLoopSection(Model model) {
        this.model = model;
    }

    Section section(LoopFound answer) {
        if (answer.help().isEmpty()) {
            return Section.of(
                    Text.say("find.loop.none"), List.of(Paragraph.say(((Headline.Unknown) answer.radius()).why())));
        }
        LoopHelp help = answer.help().get();
        Pull best = help.best();
        List<Block> blocks = new ArrayList<>();
        boolean possible = answer.round() != Round.NEVER;
        if (possible) {
            throwsToSet(blocks, best);
        }
        if (answer.round() != Round.THROTTLE_CLOSED) {
            blocks.add(Paragraph.say(key("find.loop.round", answer.round()), Value.of(best.load(), Value.Kind.LOAD)));
        }
        blocks.add(Tables.listing(
                Tables.numbers("find.loop.flap", "find.loop.up", "find.loop.load", "find.loop.radius"),
                help.points(),
                point -> Table.Cells.of(
                        Value.angle(point.flap()),
                        Value.angle(point.elevator()),
                        new Value.Plain(point.load(), 1),
                        radius(point.radius()))));
        gain(blocks, answer, help);
        blocks.add(Paragraph.say("find.stopped", FindDocument.limits(help.stoppedBy())));
        blocks.add(Paragraph.say("find.loop.left", Value.angle(best.angleLeft())));
        help.atSpeeds().forEach(at -> blocks.add(at(at)));
        help.stallsBelow().ifPresent(v -> blocks.add(Paragraph.say("find.loop.stalls-below", Value.speed(v))));
        heavy(blocks, help);
        if (possible && best.flap() > USUAL) {
            blocks.add(Paragraph.say("find.loop.usual"));
        }
        if (possible && best.flap() > 0) {
            blocks.add(Paragraph.say("find.loop.start", Value.deflection(FirstFlightStudy.FIRST_FLAP * best.flap())));
        }
        return Section.of(Text.say(key("find.loop.heading", answer.round()), Value.speed(help.speed())), blocks);
    }

    private static String key(String stem, Round round) {
        return stem + "." + round.name().toLowerCase(Locale.ROOT);
    }

    private void throwsToSet(List<Block> blocks, Pull best) {
        blocks.add(Paragraph.say(
                "find.loop.elevator",
                Value.deflection(-best.elevator()),
                new Value.Edge(-best.elevator(), model.tail().throwChord())));
        if (best.flap() > 0) {
            String flaps = SurfaceGroups.of(model).flaps().get(0).name();
            blocks.add(Paragraph.say(
                    "find.loop.flaps",
                    flaps,
                    Value.deflection(best.flap()),
                    new SurfaceTexts(model).edge(flaps, best.flap())));
        } else {
            blocks.add(Paragraph.say("find.loop.no-flaps"));
        }
    }

    private static void gain(List<Block> blocks, LoopFound answer, LoopHelp help) {
        if (!(answer.radius() instanceof Headline.Known known)) {
            return;
        }
        blocks.add(Paragraph.say(
                "find.loop.best",
                radius(known.value()),
                radius(known.low()),
                radius(known.high()),
                radius(help.points().get(0).radius()),
                Value.angle(help.own().elevator()),
                radius(help.own().radius())));
        answer.without()
                .known()
                .filter(alone -> alone.tooCloseTo(known))
                .ifPresent(alone -> blocks.add(Paragraph.say("find.loop.close")));
    }

    private static Paragraph at(LoopHelp.AtSpeed at) {
        return Paragraph.say(
                "find.loop.at",
                Value.speed(at.speed()),
                radius(at.with().radius()),
                setBy(at.with()),
                radius(at.without().radius()),
                setBy(at.without()),
                Value.of(at.with().load(), Value.Kind.LOAD),
                Value.of(at.without().load(), Value.Kind.LOAD));
    }

    /** The same question as at the loops of one set-up in depth. */
    private static void heavy(List<Block> blocks, LoopHelp help) {
        Stream.concat(
                        help.points().stream(),
                        help.atSpeeds().stream().flatMap(at -> Stream.of(at.with(), at.without())))
                .mapToDouble(Pull::load)
                .max()
                .stream()
                .filter(most -> most > PullSection.HEAVY)
                .forEach(most -> blocks.add(PullSection.heavy(most)));
    }

    private static Text setBy(Pull pull) {
        return Text.say("find.loop.set-by." + pull.setBy().name().toLowerCase(Locale.ROOT));
    }

    private static Text radius(double radius) {
        return Double.isFinite(radius) ? Value.of(radius, Value.Kind.RADIUS) : Text.say("find.loop.straight");
    }
}
