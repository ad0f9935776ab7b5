package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import throwline.correction.Doubt;
import throwline.report.document.Block;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Role;
import throwline.report.document.Text;
import throwline.report.document.Text.Join;
import throwline.report.document.Value;
import throwline.study.FlightQuantity;
import throwline.study.Learnt;
import throwline.study.Learnt.Advice;
import throwline.study.Learnt.WindFound;
import throwline.units.Dimension;

/** Remarks of flights besides numbers: contradictions, winds, what cannot be told apart, what to measure next. */
final class LearntNotes {

    /** A wind that the notes moved by more than this, m/s, is worth a word. */
    private static final double MOVED = 0.5;

    /** A wind that is still known no better than this is worth one too (PRACTICE): a share of what was told, and m/s. */
    private static final double UNKNOWN_SHARE = 0.8;

    private static final double UNKNOWN = 0.7;

    private final Learnt learnt;

    LearntNotes(Learnt learnt) {
        this.learnt = learnt;
    }

    /** On top of every answer that uses what was learnt. */
    static Text onTop(Learnt learnt) {
        return Text.say(
                "learn.top",
                count("learn.flights", learnt.flights()),
                count("learn.measurements", learnt.measurements()),
                learnt.lastDate().isEmpty() ? Text.say("learn.no-date") : Text.name(learnt.lastDate()));
    }

    private static Text count(String key, int count) {
        return count == 1 ? Text.say(key + ".one") : Text.say(key, Value.count(count));
    }

    /** Contradictions, the worst first. */
    List<Paragraph> contradictions() {
        List<Paragraph> all = new ArrayList<>();
        for (Doubt doubt : learnt.doubts()) {
            if (doubt.causes().contains(Doubt.Cause.BROKEN_OFF)) {
                all.add(Paragraph.of(Role.REMARK, Text.say("learn.broken-off", doubt.source())));
                continue;
            }
            Text causes = Text.join(
                    Join.BLANK,
                    doubt.causes(),
                    cause -> Text.say("learn.cause." + cause.name().toLowerCase(Locale.ROOT)));
            all.add(Paragraph.of(
                    doubt.contradicts() ? Role.DANGER : Role.REMARK,
                    Text.say(
                            doubt.contradicts() ? "learn.contradicts" : "learn.doubted",
                            doubt.source(),
                            new Value.Plain(Math.abs(doubt.misses()), 1),
                            causes)));
        }
        if (learnt.oneWay()) {
            all.add(Paragraph.of(Role.DANGER, Text.say("learn.one-way")));
        }
        if (learnt.wider() > 1) {
            all.add(Paragraph.of(Role.REMARK, Text.say("learn.scatter", new Value.Plain(learnt.wider(), 1))));
        }
        return all;
    }

    /** What flights told of throws that are tried. */
    List<Block> tried(Set<String> names) {
        List<String> others = learnt.changed().stream().filter(names::contains).toList();
        return others.isEmpty()
                ? List.of(Paragraph.of(Role.QUIET, Text.say("learn.tried")))
                : others.stream()
                        .map(name -> (Block) Paragraph.of(Role.QUIET, Text.say("learn.tried.others", name)))
                        .toList();
    }

    /** What else is worth knowing. */
    List<Paragraph> remarks() {
        List<Paragraph> all = new ArrayList<>();
        for (WindFound wind : learnt.winds()) {
            if (Math.abs(wind.found() - wind.told()) > MOVED) {
                all.add(Paragraph.say(
                        wind.said() ? "learn.wind" : "learn.wind-field",
                        wind.day(),
                        Value.speed(wind.found()),
                        Value.speed(wind.told())));
            }
            if (wind.sd() > UNKNOWN_SHARE * wind.toldSd() && wind.sd() > UNKNOWN) {
                all.add(Paragraph.say("learn.wind-unknown", wind.day()));
            }
        }
        if (learnt.flown().size() == 1) {
            all.add(Paragraph.say("learn.one-setup", learnt.flown().get(0)));
        }
        learnt.changed().forEach(name -> all.add(Paragraph.say("learn.changed", name)));
        learnt.unused().forEach(name -> all.add(Paragraph.say("learn.unused", name)));
        learnt.surprises().forEach(name -> all.add(Paragraph.of(Role.REMARK, Text.say("learn.surprise", name))));
        all.add(Paragraph.say("learn.apart"));
        all.add(Paragraph.say("learn.approach"));
        return all;
    }

    /** What to measure next, as instructions. */
    List<Paragraph> next() {
        List<Paragraph> all = new ArrayList<>();
        for (Advice advice : learnt.next()) {
            all.add(Paragraph.of(Text.say(
                    "learn.next." + advice.what(),
                    advice.setUp(),
                    half(advice, advice.band()),
                    half(advice, advice.then()),
                    Value.count(Math.round(advice.minutes())),
                    advice.stick())));
        }
        if (all.isEmpty()) {
            all.add(Paragraph.say("learn.next.enough"));
        }
        return all;
    }

    private static Text half(Advice advice, double half) {
        return advice.quantity() == FlightQuantity.ELEVATOR ? Value.measure(half, Dimension.ANGLE) : Value.share(half);
    }
}
