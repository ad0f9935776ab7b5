package throwline.report.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.model.Model;
import throwline.model.Surface;
import throwline.report.BenchThrow;
import throwline.report.Headlines;
import throwline.report.Sentences;
import throwline.report.document.Figures;
import throwline.sizing.MixCurve;
import throwline.study.FindResult.TrimFound;
import throwline.study.Headline;
import throwline.words.Words;

/** An elevator mix as points in degrees, at the trailing edge and in per cent of the travel. */
final class MixText {

    private final Model model;
    private final FindWords say;
    private final Figures figures;
    private final Words words;
    private final Sentences sentences;

    MixText(Model model, FindWords say, Words words, Sentences sentences) {
        this.model = model;
        this.say = say;
        figures = say.figures();
        this.words = words;
        this.sentences = sentences;
    }

    String write(TrimFound answer) {
        StringBuilder text = new StringBuilder();
        String lever =
                words.say("find.wanted.trim", answer.from().name(), answer.to().name());
        say.outcome(
                text,
                lever,
                answer.shortOf().isEmpty() && answer.curve().isPresent(),
                answer.curve().isPresent());
        answer.shortOf().ifPresent(note -> say.line(text, sentences.say(note)));
        if (answer.curve().isEmpty()) {
            if (answer.shortOf().isEmpty()) {
                say.line(text, sentences.why((Headline.Unknown) answer.whole()));
            }
            return text.append('\n').toString();
        }
        MixCurve curve = answer.curve().get();
        Optional<Headline.Known> whole = Headlines.known(answer.whole());
        boolean eitherWay = whole.map(Headlines::eitherWay).orElse(true);
        say.line(text, words.say("find.mix.speed", figures.speed(curve.speed())));
        text.append('\n').append(elevator(curve, eitherWay)).append('\n');
        text.append(surfaces(answer, curve)).append('\n');
        whole.ifPresent(known -> say.line(
                text,
                words.say(
                        "find.mix.band",
                        say.page().units().length().symbol(),
                        figures.edgeBand(known, FindWords.elevatorEdge(model)))));
        say.line(text, words.say(eitherWay ? "find.mix.start-none" : "find.mix.start"));
        say.line(text, words.say("find.mix.straight", say.angleStep(curve.straightError())));
        for (MixCurve.AtSpeed other : curve.otherSpeeds()) {
            say.line(
                    text,
                    words.say(
                            "find.mix.other",
                            figures.speed(other.speed()),
                            figures.deflection(other.elevator()),
                            figures.edge(other.elevator(), FindWords.elevatorEdge(model))));
        }
        if (answer.to().elevator() != 0) {
            say.line(
                    text,
                    words.say(
                            "find.mix.programmed",
                            answer.to().name(),
                            figures.edge(answer.to().elevator(), FindWords.elevatorEdge(model))));
        }
        say.line(text, words.say("find.mix.power"));
        return text.append('\n').toString();
    }

    private String elevator(MixCurve curve, boolean eitherWay) {
        Columns columns = new Columns(
                List.of(
                        words.say("find.mix.lever"),
                        words.say("find.mix.elevator"),
                        words.say("find.mix.distance"),
                        words.say("find.mix.travel"),
                        words.say(eitherWay ? "find.mix.first-none" : "find.mix.first"),
                        words.say("find.mix.distance"),
                        words.say("find.mix.travel")),
                7);
        for (MixCurve.Point point : curve.points()) {
            List<String> cells = new ArrayList<>(List.of(figures.lever(point.lever())));
            cells.addAll(cells(BenchThrow.ofElevator(model, "", point.elevator())));
            cells.addAll(cells(BenchThrow.ofElevator(model, "", eitherWay ? 0 : point.elevator() / 2)));
            columns.row(cells);
        }
        return columns.render(say.page());
    }

    private List<String> cells(BenchThrow elevator) {
        return List.of(
                figures.deflection(elevator.angle()),
                figures.edge(elevator.angle(), FindWords.elevatorEdge(model)),
                figures.share(elevator.share()));
    }

    /** Where the surfaces stand at the points of the lever. */
    private String surfaces(TrimFound answer, MixCurve curve) {
        List<Surface> moved = FindWords.movable(model).stream()
                .filter(s -> answer.to().deflection(s.name()) != answer.from().deflection(s.name()))
                .toList();
        List<String> headers = new ArrayList<>(List.of(words.say("find.mix.lever")));
        for (Surface surface : moved) {
            headers.add(say.page().shown(surface.name()));
            headers.add(words.say("find.mix.distance"));
            headers.add(words.say("find.mix.travel"));
        }
        Columns columns = new Columns(headers, headers.size());
        for (MixCurve.Point point : curve.points()) {
            List<String> cells = new ArrayList<>(List.of(figures.lever(point.lever())));
            for (Surface surface : moved) {
                double from = surface.reached(answer.from().deflection(surface.name()));
                double to = surface.reached(answer.to().deflection(surface.name()));
                BenchThrow bench = BenchThrow.of(model, surface, from + point.lever() * (to - from));
                cells.add(figures.deflection(bench.angle()));
                cells.add(figures.edge(bench.angle(), FindWords.edge(model, surface.name())));
                cells.add(figures.share(bench.share()));
            }
            columns.row(cells);
        }
        return columns.render(say.page());
    }
}
