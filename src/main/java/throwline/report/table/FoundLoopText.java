package throwline.report.table;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import throwline.model.Model;
import throwline.report.EdgeThrow;
import throwline.report.Headlines;
import throwline.report.Sentences;
import throwline.report.document.Figures;
import throwline.sizing.LoopHelp;
import throwline.sizing.LoopHelp.Pull;
import throwline.sizing.SurfaceGroups;
import throwline.study.FindResult.LoopFound;
import throwline.study.Headline;
import throwline.words.Words;

/** How far flaps should go down with full up elevator, in words. */
final class FoundLoopText {

    /** More flap than this with full elevator is unusual, rad (PRACTICE, methods manual 17.1). */
    private static final double USUAL = Math.toRadians(10);

    private final Model model;
    private final FindWords say;
    private final Figures figures;
    private final Words words;
    private final Sentences sentences;

    FoundLoopText(Model model, FindWords say, Words words, Sentences sentences) {
        this.model = model;
        this.say = say;
        figures = say.figures();
        this.words = words;
        this.sentences = sentences;
    }

    String write(LoopFound answer) {
        StringBuilder text = new StringBuilder();
        if (answer.help().isEmpty()) {
            say.heading(text, words.say("find.loop.none"));
            say.line(text, sentences.why((Headline.Unknown) answer.radius()));
            return text.append('\n').toString();
        }
        LoopHelp help = answer.help().get();
        say.heading(text, words.say("find.loop.heading", figures.speed(help.speed())));
        Pull best = help.best();
        EdgeThrow elevator = FindWords.elevatorEdge(model);
        say.line(
                text,
                words.say(
                        "find.loop.elevator",
                        figures.deflection(-best.elevator()),
                        figures.edge(-best.elevator(), elevator)));
        if (best.flap() > 0) {
            String flaps = SurfaceGroups.of(model).flaps().get(0).name();
            say.line(
                    text,
                    words.say(
                            "find.loop.flaps",
                            flaps,
                            figures.deflection(best.flap()),
                            figures.edge(best.flap(), FindWords.edge(model, flaps))));
        } else {
            say.line(text, words.say("find.loop.no-flaps"));
        }
        text.append('\n').append(points(help)).append('\n');
        gain(text, answer, help);
        say.line(text, words.say("find.stopped", say.limits(help.stoppedBy())));
        say.line(text, words.say("find.loop.left", figures.degrees(best.angleLeft())));
        speeds(text, help);
        help.stallsBelow().ifPresent(v -> say.line(text, words.say("find.loop.stalls-below", figures.speed(v))));
        heavy(text, help);
        if (best.flap() > USUAL) {
            say.line(text, words.say("find.loop.usual"));
        }
        say.line(text, words.say("find.loop.start"));
        return text.append('\n').toString();
    }

    private String points(LoopHelp help) {
        Columns columns = new Columns(
                List.of(
                        words.say("find.loop.flap"),
                        words.say("find.loop.up"),
                        words.say("find.loop.load"),
                        words.say("find.loop.radius")),
                4);
        for (Pull point : help.points()) {
            columns.row(List.of(
                    figures.degrees(point.flap()),
                    figures.degrees(point.elevator()),
                    load(point.load()),
                    radius(point.radius())));
        }
        return columns.render(say.page());
    }

    private void gain(StringBuilder text, LoopFound answer, LoopHelp help) {
        if (!(answer.radius() instanceof Headline.Known known)) {
            return;
        }
        say.line(
                text,
                words.say(
                        "find.loop.best",
                        radius(known.value()),
                        radius(known.low()),
                        radius(known.high()),
                        radius(help.points().get(0).radius()),
                        figures.degrees(help.own().elevator()),
                        radius(help.own().radius())));
        Headlines.known(answer.without())
                .filter(alone -> Headlines.tooClose(alone, known))
                .ifPresent(alone -> say.line(text, words.say("find.loop.close")));
    }

    private void speeds(StringBuilder text, LoopHelp help) {
        for (LoopHelp.AtSpeed at : help.atSpeeds()) {
            say.line(
                    text,
                    words.say(
                            "find.loop.at",
                            figures.speed(at.speed()),
                            radius(at.with().radius()),
                            setBy(at.with()),
                            radius(at.without().radius()),
                            setBy(at.without()),
                            figures.load(at.with().load()),
                            figures.load(at.without().load())));
        }
    }

    /** The same question as at the loops of one set-up in depth. */
    private void heavy(StringBuilder text, LoopHelp help) {
        Stream.concat(
                        help.points().stream(),
                        help.atSpeeds().stream().flatMap(at -> Stream.of(at.with(), at.without())))
                .mapToDouble(Pull::load)
                .max()
                .stream()
                .filter(most -> most > PullLines.HEAVY)
                .forEach(most -> say.line(text, words.say("fly.loop.heavy", figures.load(most))));
    }

    private String setBy(Pull pull) {
        return words.say("find.loop.set-by." + pull.setBy().name().toLowerCase(Locale.ROOT));
    }

    private static String load(double load) {
        return String.format(Locale.ROOT, "%.1f", load);
    }

    private String radius(double radius) {
        return Double.isFinite(radius) ? String.format(Locale.ROOT, "%.1f m", radius) : words.say("find.loop.straight");
    }
}
