package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import throwline.model.Field;
import throwline.model.Model;
import throwline.report.TooCloseToCall;
import throwline.report.document.Block;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Table;
import throwline.report.document.Text;
import throwline.report.document.Text.Join;
import throwline.report.document.Value;
import throwline.study.FieldAnswer;
import throwline.study.FieldAnswer.Legs;
import throwline.study.FieldAnswer.Margins;
import throwline.study.FlightQuantity;
import throwline.study.FlyResult;
import throwline.study.Handling.Rank;
import throwline.study.Headline;
import throwline.study.SetUpResult;

/** Landing leg by leg, the landings of all set-ups in a row, and what bumps it takes. */
final class LandingSection {

    /** Gusts nearer to each other than this are one sentence, m/s: nobody tells them apart (common practice, no source). */
    private static final double ALIKE = 0.3;

    private final Model model;
    private final Field field;
    private final SetUpResult result;
    private final FieldAnswer answer;
    private final List<Rank> ranking;

    LandingSection(FlyResult flown) {
        model = flown.model();
        field = model.field();
        result = flown.glance();
        answer = result.field();
        ranking = flown.handling().ranking();
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        List<Legs> landings = new ArrayList<>();
        answer.stillAir().ifPresent(landings::add);
        answer.inWind().ifPresent(landings::add);
        if (!landings.isEmpty()) {
            blocks.add(legs(landings));
        }
        blocks.addAll(remarks());
        blocks.addAll(ranking());
        return blocks;
    }

    /** The legs, in still air and against the field's wind. */
    private Table legs(List<Legs> landings) {
        List<Table.Row> rows = new ArrayList<>();
        if (field.obstacle() > 0) {
            row(
                    rows,
                    landings,
                    "fly.landing.approach",
                    legs -> legs.approach() >= 0 ? Value.distance(legs.approach()) : Text.say("fly.landing.before"));
        }
        row(rows, landings, "fly.landing.from", legs -> Value.of(legs.roundOutHeight(), Value.Kind.HEIGHT));
        row(rows, landings, "fly.landing.round", legs -> Value.distance(legs.roundOut()));
        row(rows, landings, "fly.landing.floats", legs -> Value.distance(legs.floated()));
        row(rows, landings, "fly.landing.touches", legs -> Value.speed(legs.touchdownSpeed()));
        String roll = model.wheels().isPresent() ? "fly.landing.rolls" : "fly.landing.slides";
        row(rows, landings, roll, legs -> Value.distance(legs.roll()));
        row(
                rows,
                landings,
                "fly.landing.all",
                legs -> total(legs) instanceof Headline.Known known ? Value.distance(known.value()) : Text.none());
        LandingFit fit = new LandingFit(field);
        fit.heading().ifPresent(heading -> rows.add(Tables.row(heading, landings, legs -> fit.of(total(legs)))));
        return Tables.labelled(
                landings,
                legs -> legs.wind() > 0
                        ? Text.say("fly.landing.wind", Value.speed(legs.wind()))
                        : Text.say("fly.landing.still"),
                rows);
    }

    private Headline total(Legs legs) {
        return result.number(
                answer.stillAir().filter(legs::equals).isPresent()
                        ? FlightQuantity.LANDING_DISTANCE
                        : FlightQuantity.LANDING_DISTANCE_IN_WIND);
    }

    private static void row(List<Table.Row> rows, List<Legs> landings, String key, Function<Legs, Text> cell) {
        rows.add(Tables.row(Text.say(key), landings, cell));
    }

    /** What the elevator does, how it floats, what the wind takes; a sentence each. */
    private List<Paragraph> remarks() {
        List<Paragraph> said = new ArrayList<>();
        double chord = model.tail().throwChord();
        answer.elevator()
                .ifPresent(e -> said.add(Paragraph.say(
                        "fly.landing.elevator",
                        new Value.Edge(e.roundOut(), chord),
                        new Value.Edge(e.touchdown(), chord),
                        Value.angle(Math.max(0, e.left())))));
        answer.stillAir().ifPresent(legs -> {
            said.add(Paragraph.say(
                    "fly.landing.ground",
                    Value.distance(legs.glideLow()),
                    Value.distance(legs.glideWithoutGround()),
                    Value.distance(legs.floatedWithoutGround()),
                    Value.of(FieldAnswer.GLIDE_FROM, Value.Kind.HEIGHT),
                    Value.of(FieldAnswer.GLIDE_TO, Value.Kind.HEIGHT)));
            if (legs.sink() > 0) {
                said.add(Paragraph.say("fly.landing.sink", Value.of(legs.sink(), Value.Kind.VERTICAL_SPEED)));
            }
        });
        answer.inWind()
                .ifPresent(legs -> said.add(Paragraph.say("fly.landing.gradient", Value.speed(legs.windLost()))));
        if (answer.stillAir().isPresent()
                && result.number(FlightQuantity.LANDING_DISTANCE_IN_WIND) instanceof Headline.Unknown why) {
            said.add(Paragraph.say(why.why()));
        }
        return said;
    }

    /** All set-ups, shortest landing first, and which cannot be told apart. */
    private List<Paragraph> ranking() {
        if (ranking.size() < 2) {
            return List.of();
        }
        List<Paragraph> said = new ArrayList<>();
        said.add(Paragraph.say(
                "fly.rank",
                Text.join(
                        Join.COMMA,
                        ranking,
                        rank -> Text.say(
                                "fly.rank.one",
                                rank.setUp(),
                                Value.distance(rank.landing().value())))));
        if (field.obstacle() == 0) {
            said.add(Paragraph.say("fly.rank.start"));
        }
        TooCloseToCall.groups(ranking.stream()
                        .map(rank -> new TooCloseToCall.Entry(rank.setUp(), rank.landing()))
                        .toList())
                .forEach(group -> said.add(Paragraph.say("fly.rank.close", Text.join(Join.COMMA, group, Text::name))));
        return said;
    }

    /** What is left before the stall. */
    List<Paragraph> bumps() {
        List<Paragraph> said = new ArrayList<>();
        if (answer.margins().isPresent() && result.number(FlightQuantity.GUST_LIMIT) instanceof Headline.Known gust) {
            Margins margins = answer.margins().get();
            said.add(Paragraph.say("fly.bumps.left", Value.speed(margins.speed()), Value.angle(margins.angle())));
            said.add(Paragraph.say(
                    gust.value() - margins.firstGust() < ALIKE ? "fly.bumps.gust.at-once" : "fly.bumps.gust",
                    Value.of(gust.value(), Value.Kind.VERTICAL_SPEED),
                    Value.of(margins.firstGust(), Value.Kind.VERTICAL_SPEED),
                    Value.of(margins.usualLoad(), Value.Kind.LOAD),
                    Value.of(FieldAnswer.USUAL_GUST, Value.Kind.VERTICAL_SPEED)));
            said.add(Paragraph.say("fly.bumps.headwind", Value.speed(margins.headwindLimit())));
        }
        return said;
    }
}
