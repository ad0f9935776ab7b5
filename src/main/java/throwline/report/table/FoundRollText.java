package throwline.report.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import throwline.model.Model;
import throwline.model.Stick;
import throwline.report.Headlines;
import throwline.report.Sentences;
import throwline.report.document.Figures;
import throwline.sizing.FoundThrow;
import throwline.sizing.RollHelp;
import throwline.sizing.SetUpWants.WantedRoll;
import throwline.study.FindResult.HelpFound;
import throwline.study.FindResult.RollFound;
import throwline.study.Headline;
import throwline.words.Words;

/** How far the ailerons must go, and what flaps add, in words. */
final class FoundRollText {

    private static final double ROUND = 2 * Math.PI;

    private final Model model;
    private final FindWords say;
    private final Figures figures;
    private final Words words;
    private final Sentences sentences;

    FoundRollText(Model model, FindWords say, Words words, Sentences sentences) {
        this.model = model;
        this.say = say;
        figures = say.figures();
        this.words = words;
        this.sentences = sentences;
    }

    String roll(RollFound answer, WantedRoll wanted) {
        StringBuilder text = new StringBuilder();
        String want = words.say(
                "find.wanted.roll",
                figures.rate(wanted.rate()),
                figures.speed(wanted.speed()),
                answer.in().name());
        boolean met = answer.found().map(FoundThrow::met).orElse(false);
        say.outcome(text, want, met, answer.found().isPresent());
        if (answer.found().isEmpty()) {
            say.line(text, rate(answer.rate()));
            return text.append('\n').toString();
        }
        FoundThrow found = answer.found().get();
        if (!met) {
            say.line(text, words.say("find.stopped", say.limits(found.why())));
        }
        moves(found.stick()).forEach(line -> say.line(text, line));
        say.line(text, words.say("find.roll.rate", rate(answer.rate()), figures.seconds(ROUND / found.rate())));
        if (met) {
            say.line(text, words.say("find.roll.stops", figures.rate(found.rateAtStops())));
            say.line(text, words.say("find.roll.degree", figures.rateStep(found.perDegree())));
        }
        Headlines.known(answer.rate())
                .filter(known -> met)
                .ifPresent(known -> say.line(
                        text,
                        words.say(
                                "find.roll.sure",
                                figures.share(known.value() / known.high()),
                                figures.share(known.value() / known.low()))));
        say.line(text, words.say(FlyTable.nose(found.yawing()), found.stick().name()));
        return text.append('\n').toString();
    }

    String help(HelpFound answer) {
        StringBuilder text = new StringBuilder();
        if (answer.help().isEmpty()) {
            say.heading(text, words.say("find.help.none", answer.helped().name()));
            say.line(text, rate(answer.without()));
            return text.append('\n').toString();
        }
        RollHelp help = answer.help().get();
        say.heading(
                text,
                words.say(
                        "find.help.heading",
                        answer.helped().name(),
                        figures.speed(help.speed()),
                        answer.in().name()));
        Columns columns = new Columns(
                List.of(
                        words.say("find.help.up"),
                        words.say("find.help.down"),
                        words.say("find.help.rate"),
                        words.say("find.help.gain")),
                4);
        double without = help.points().get(0).rate();
        for (RollHelp.Point point : help.points()) {
            columns.row(List.of(
                    figures.degrees(point.flapUp()),
                    figures.degrees(point.flapDown()),
                    figures.rate(point.rate()),
                    figures.rate(point.rate() - without)));
        }
        text.append('\n').append(columns.render(say.page())).append('\n');
        RollHelp.Point best = help.best();
        if (best.size() == 0) {
            say.line(text, words.say("find.help.useless"));
        } else {
            say.line(
                    text,
                    words.say(
                            "find.help.best",
                            figures.degrees(best.flapUp()),
                            figures.degrees(best.flapDown()),
                            rate(answer.with()),
                            figures.rate(best.rate() - without),
                            say.limits(List.of(help.stoppedBy()))));
            close(text, answer);
        }
        say.line(text, words.say(FlyTable.nose(best.yawing()), answer.helped().name()));
        return text.append('\n').toString();
    }

    private void close(StringBuilder text, HelpFound answer) {
        boolean close = Headlines.known(answer.without())
                .flatMap(a -> Headlines.known(answer.with()).map(b -> Headlines.tooClose(a, b)))
                .orElse(false);
        if (close) {
            say.line(text, words.say("find.help.close"));
        }
    }

    /** Ailerons 12 degrees up (16 mm up) and 8 degrees down (10 mm down). */
    private List<String> moves(Stick.Roll stick) {
        List<String> lines = new ArrayList<>();
        for (Map.Entry<String, Stick.Throws> moved : new TreeMap<>(stick.throwsBySurface()).entrySet()) {
            lines.add(words.say(
                    "row.stick.roll",
                    moved.getKey(),
                    twice(moved.getKey(), -moved.getValue().up()),
                    twice(moved.getKey(), moved.getValue().down())));
        }
        return lines;
    }

    private String twice(String surface, double angle) {
        return words.say(
                "row.both-ways", figures.deflection(angle), figures.edge(angle, FindWords.edge(model, surface)));
    }

    private String rate(Headline headline) {
        if (headline instanceof Headline.Known known) {
            return words.say("find.likely", figures.rate(known.value()), figures.rateBand(known));
        }
        return sentences.why((Headline.Unknown) headline);
    }
}
