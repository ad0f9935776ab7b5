package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import throwline.model.Model;
import throwline.report.document.Block;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Block.Section;
import throwline.report.document.Table;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.sizing.FoundThrow;
import throwline.sizing.RollHelp;
import throwline.sizing.SetUpWants.WantedRoll;
import throwline.study.FindResult.HelpFound;
import throwline.study.FindResult.RollFound;
import throwline.study.Headline;

/** Section on how far the ailerons must go, and what flaps add. */
final class FoundRollSection {

    private static final double ROUND = 2 * Math.PI;

    private final Model model;

    FoundRollSection(Model model) {
        this.model = model;
    }

    Section roll(RollFound answer, WantedRoll wanted) {
        Text want = Text.say(
                "find.wanted.roll",
                rate(wanted.rate()),
                Value.speed(wanted.speed()),
                answer.in().name());
        boolean met = answer.found().map(FoundThrow::met).orElse(false);
        List<Block> blocks = new ArrayList<>();
        answer.found()
                .ifPresentOrElse(
                        found -> roll(blocks, answer.rate(), found),
                        () -> blocks.add(Paragraph.of(likely(answer.rate()))));
        return Section.of(FindDocument.outcome(want, met, answer.found().isPresent()), blocks);
    }

    private void roll(List<Block> blocks, Headline rate, FoundThrow found) {
        if (!found.met()) {
            blocks.add(Paragraph.say("find.stopped", FindDocument.limits(found.why())));
        }
        new SurfaceTexts(model).moves(found.stick()).forEach(line -> blocks.add(Paragraph.of(line)));
        blocks.add(Paragraph.say("find.roll.rate", likely(rate), Value.time(ROUND / found.rate())));
        if (found.met()) {
            blocks.add(Paragraph.say("find.roll.stops", rate(found.rateAtStops())));
            blocks.add(Paragraph.say("find.roll.degree", Value.of(found.perDegree(), Value.Kind.RATE_STEP)));
            rate.known()
                    .ifPresent(known -> blocks.add(Paragraph.say(
                            "find.roll.sure",
                            Value.share(known.value() / known.high()),
                            Value.share(known.value() / known.low()))));
        }
        blocks.add(Paragraph.say(FlyDocument.nose(found.yawing()), found.stick().name()));
    }

    Section help(HelpFound answer) {
        String helped = answer.helped().name();
        if (answer.help().isEmpty()) {
            return Section.of(Text.say("find.help.none", helped), List.of(Paragraph.of(likely(answer.without()))));
        }
        RollHelp help = answer.help().get();
        double without = help.points().get(0).rate();
        RollHelp.Point best = help.best();
        List<Block> blocks = new ArrayList<>();
        blocks.add(Tables.listing(
                Tables.numbers("find.help.up", "find.help.down", "find.help.rate", "find.help.gain"),
                help.points(),
                point -> Table.Cells.of(
                        Value.angle(point.flapUp()),
                        Value.angle(point.flapDown()),
                        rate(point.rate()),
                        rate(point.rate() - without))));
        if (best.size() == 0) {
            blocks.add(Paragraph.say("find.help.useless"));
        } else {
            blocks.add(Paragraph.say(
                    "find.help.best",
                    Value.angle(best.flapUp()),
                    Value.angle(best.flapDown()),
                    likely(answer.with()),
                    rate(best.rate() - without),
                    FindDocument.limits(List.of(help.stoppedBy()))));
            if (isClose(answer)) {
                blocks.add(Paragraph.say("find.help.close"));
            }
        }
        blocks.add(Paragraph.say(FlyDocument.nose(best.yawing()), helped));
        Text heading = Text.say(
                "find.help.heading",
                helped,
                Value.speed(help.speed()),
                answer.in().name());
        return Section.of(heading, blocks);
    }

    private static boolean isClose(HelpFound answer) {
        return answer.without()
                .known()
                .flatMap(a -> answer.with().known().map(b -> a.tooCloseTo(b)))
                .orElse(false);
    }

    private static Value rate(double rate) {
        return Value.of(rate, Value.Kind.RATE);
    }

    private static Text likely(Headline rate) {
        return FindDocument.likely(rate, Value.Kind.RATE);
    }
}
