package throwline.report.table;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import throwline.model.Field;
import throwline.model.Model;
import throwline.report.EdgeThrow;
import throwline.report.Page;
import throwline.report.TooCloseToCall;
import throwline.report.document.Figures;
import throwline.study.FieldAnswer;
import throwline.study.FieldAnswer.Legs;
import throwline.study.FieldAnswer.Margins;
import throwline.study.FlightQuantity;
import throwline.study.Handling.Rank;
import throwline.study.Headline;
import throwline.study.SetUpResult;
import throwline.words.Words;

/** Landing leg by leg, the landings of all set-ups in a row, and what bumps it takes, as lines for a terminal. */
final class LandingLines {

    private final Field field;
    private final boolean onWheels;
    private final Page page;
    private final Words words;
    private final Figures figures;
    private final LandingFit fit;

    LandingLines(Model model, Page page, Words words, Figures figures) {
        field = model.field();
        onWheels = model.wheels().isPresent();
        this.page = page;
        this.words = words;
        this.figures = figures;
        fit = new LandingFit(field, words, figures);
    }

    /** The legs, in still air and against the field's wind. */
    String legs(SetUpResult result) {
        FieldAnswer answer = result.field();
        List<Legs> landings = new ArrayList<>();
        answer.stillAir().ifPresent(landings::add);
        answer.inWind().ifPresent(landings::add);
        if (landings.isEmpty()) {
            return "";
        }
        Grid grid = new Grid(landings.stream()
                .map(legs -> legs.wind() > 0
                        ? words.say("fly.landing.wind", figures.speed(legs.wind()))
                        : words.say("fly.landing.still"))
                .toList());
        if (field.obstacle() > 0) {
            row(grid, landings, "fly.landing.approach", this::approach);
        }
        row(grid, landings, "fly.landing.from", legs -> figures.height(legs.roundOutHeight()));
        row(grid, landings, "fly.landing.round", legs -> figures.metres(legs.roundOut()));
        row(grid, landings, "fly.landing.floats", legs -> figures.metres(legs.floated()));
        row(grid, landings, "fly.landing.touches", legs -> figures.speed(legs.touchdownSpeed()));
        row(grid, landings, onWheels ? "fly.landing.rolls" : "fly.landing.slides", legs -> figures.metres(legs.roll()));
        List<Headline> totals = landings.size() == 1
                ? List.of(result.number(FlightQuantity.LANDING_DISTANCE))
                : List.of(
                        result.number(FlightQuantity.LANDING_DISTANCE),
                        result.number(FlightQuantity.LANDING_DISTANCE_IN_WIND));
        grid.row(words.say("fly.landing.all"), totals.stream().map(this::metres).toList());
        if (field.length().isPresent()) {
            grid.row(fit.heading(), totals.stream().map(fit::of).toList());
        }
        return grid.render(page);
    }

    private String approach(Legs legs) {
        return legs.approach() >= 0 ? figures.metres(legs.approach()) : words.say("fly.landing.before");
    }

    private void row(Grid grid, List<Legs> landings, String key, Function<Legs, String> cell) {
        grid.row(words.say(key), landings.stream().map(cell).toList());
    }

    private String metres(Headline headline) {
        return headline instanceof Headline.Known known ? figures.metres(known.value()) : "";
    }

    /** What the elevator does, how it floats, what the wind takes; a sentence each. */
    List<String> remarks(SetUpResult result, EdgeThrow edge) {
        FieldAnswer answer = result.field();
        List<String> lines = new ArrayList<>();
        answer.elevator()
                .ifPresent(e -> lines.add(words.say(
                        "fly.landing.elevator",
                        figures.edge(e.roundOut(), edge),
                        figures.edge(e.touchdown(), edge),
                        figures.degrees(Math.max(0, e.left())))));
        answer.stillAir().ifPresent(legs -> {
            lines.add(words.say(
                    "fly.landing.ground",
                    figures.metres(legs.glideLow()),
                    figures.metres(legs.glideWithoutGround()),
                    figures.metres(legs.floatedWithoutGround())));
            if (legs.sink() > 0) {
                lines.add(words.say("fly.landing.sink", figures.speed(legs.sink())));
            }
        });
        answer.inWind().ifPresent(legs -> lines.add(words.say("fly.landing.gradient", figures.speed(legs.windLost()))));
        if (answer.stillAir().isPresent()
                && result.number(FlightQuantity.LANDING_DISTANCE_IN_WIND) instanceof Headline.Unknown why) {
            lines.add(words.say(why.why()));
        }
        return lines;
    }

    /** All set-ups, shortest landing first, and which cannot be told apart. */
    List<String> ranking(List<Rank> ranking) {
        if (ranking.size() < 2) {
            return List.of();
        }
        List<String> names = ranking.stream()
                .map(rank -> words.say(
                        "fly.rank.one",
                        rank.setUp(),
                        figures.metres(rank.landing().value())))
                .toList();
        List<String> lines = new ArrayList<>();
        lines.add(words.say("fly.rank", String.join(", ", names)));
        if (field.obstacle() == 0) {
            lines.add(words.say("fly.rank.start"));
        }
        TooCloseToCall.groups(ranking.stream()
                        .map(rank -> new TooCloseToCall.Entry(rank.setUp(), rank.landing()))
                        .toList())
                .forEach(group -> lines.add(words.say("fly.rank.close", String.join(", ", group))));
        return lines;
    }

    /** What is left before the stall. */
    List<String> bumps(SetUpResult result) {
        FieldAnswer answer = result.field();
        List<String> lines = new ArrayList<>();
        if (answer.margins().isPresent() && result.number(FlightQuantity.GUST_LIMIT) instanceof Headline.Known gust) {
            Margins margins = answer.margins().get();
            lines.add(words.say("fly.bumps.left", figures.speed(margins.speed()), figures.degrees(margins.angle())));
            String stalls = figures.speed(gust.value());
            String first = figures.speed(margins.firstGust());
            lines.add(words.say(
                    stalls.equals(first) ? "fly.bumps.gust.at-once" : "fly.bumps.gust",
                    stalls,
                    first,
                    figures.load(margins.usualLoad()),
                    figures.speed(FieldAnswer.USUAL_GUST)));
            lines.add(words.say("fly.bumps.headwind", figures.speed(margins.headwindLimit())));
        }
        return lines;
    }
}
