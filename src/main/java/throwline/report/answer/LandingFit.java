package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import throwline.model.Field;
import throwline.report.document.Comparison.Below;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.study.FieldFit;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.SetUpResult;

/** Fit of a landing to the length of the field, with and without the field's wind, bands considered. */
final class LandingFit {

    private final Field field;

    LandingFit(Field field) {
        this.field = field;
    }

    /** Lines below the landing: against the wind, and whether it fits the field; models have fields of their own. */
    static List<Below> below(List<Flown> all) {
        List<Below> below = new ArrayList<>();
        distinct(all, Field::wind)
                .filter(wind -> wind > 0)
                .forEach(wind -> below.add(Below.of(
                                Text.say("row.stops.wind", Value.speed(wind)),
                                Flown.each(
                                        all,
                                        (flown, r) -> flown.model().field().wind() == wind ? inWind(r) : Text.none()))
                        .folded()));
        distinct(all, LandingFit::length)
                .filter(Double::isFinite)
                .forEach(length ->
                        below.add(Below.of(fitting("row.stops.field", length), Flown.each(all, (flown, r) -> {
                            Field field = flown.model().field();
                            return length(field) == length ? new LandingFit(field).cell(r) : Text.none();
                        }))));
        return below;
    }

    private static Stream<Double> distinct(List<Flown> all, ToDoubleFunction<Field> of) {
        return all.stream()
                .map(flown -> of.applyAsDouble(flown.model().field()))
                .distinct();
    }

    private static Text inWind(SetUpResult result) {
        if (result.number(FlightQuantity.LANDING_DISTANCE_IN_WIND) instanceof Headline.Known known) {
            return Value.distance(known.value());
        }
        return result.number(FlightQuantity.LANDING_DISTANCE) instanceof Headline.Known
                ? Text.say("row.stops.drifts")
                : Text.none();
    }

    /** Label of a row about the field; empty where its length is not known. */
    Optional<Text> heading() {
        return heading("row.stops.field");
    }

    /** The same in these words. */
    Optional<Text> heading(String key) {
        return field.length().isPresent() ? Optional.of(fitting(key, length(field))) : Optional.empty();
    }

    private static Text fitting(String key, double length) {
        return Text.say(key, Value.distance(length));
    }

    /** Fits, fits with the wind, may not fit, or does not. */
    Text cell(SetUpResult result) {
        return FieldFit.of(result, field).map(LandingFit::say).orElse(Text.none());
    }

    /** The same words for a single landing; the field's length must be known. */
    Text of(Headline landing) {
        return landing.known()
                .map(known -> say(FieldFit.of(known, length(field))))
                .orElse(say(FieldFit.TOO_SHORT));
    }

    private static Text say(FieldFit fit) {
        return Text.say(
                switch (fit) {
                    case FITS -> "row.fit.yes";
                    case FITS_WITH_WIND -> "row.fit.wind";
                    case MAY_FIT -> "row.fit.perhaps";
                    case TOO_SHORT -> "row.fit.no";
                    case DRIFTS_BACK -> "row.fit.drifts";
                });
    }

    private static double length(Field field) {
        return field.length().orElse(Double.POSITIVE_INFINITY);
    }
}
