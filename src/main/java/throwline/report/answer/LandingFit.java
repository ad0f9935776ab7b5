package throwline.report.answer;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
        Set<Text> winds = new LinkedHashSet<>();
        Set<Text> lengths = new LinkedHashSet<>();
        all.forEach(flown -> {
            LandingFit fit = new LandingFit(flown.model().field());
            fit.wind().ifPresent(winds::add);
            fit.heading().ifPresent(lengths::add);
        });
        List<Below> below = new ArrayList<>();
        winds.forEach(label -> below.add(below(all, label).folded()));
        lengths.forEach(label -> below.add(below(all, label)));
        return below;
    }

    private static Below below(List<Flown> all, Text label) {
        return Below.of(
                label,
                Flown.each(all, (flown, r) -> new LandingFit(flown.model().field()).below(label, r)));
    }

    private Text below(Text label, SetUpResult result) {
        if (wind().filter(label::equals).isPresent()) {
            return inWind(result);
        }
        return heading().filter(label::equals).isPresent() ? cell(result) : Text.none();
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
        return field.length().isPresent() ? Optional.of(Text.say(key, Value.distance(length()))) : Optional.empty();
    }

    /** Label of a row about the wind; empty where there is none. */
    Optional<Text> wind() {
        return field.wind() > 0 ? Optional.of(Text.say("row.stops.wind", Value.speed(field.wind()))) : Optional.empty();
    }

    /** Fits, fits with the wind, may not fit, or does not. */
    Text cell(SetUpResult result) {
        return FieldFit.of(result, field).map(LandingFit::say).orElse(Text.none());
    }

    /** The same words for a single landing; the field's length must be known. */
    Text of(Headline landing) {
        return landing.known().map(known -> say(FieldFit.of(known, length()))).orElse(say(FieldFit.TOO_SHORT));
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

    private double length() {
        return field.length().orElse(Double.POSITIVE_INFINITY);
    }
}
