package throwline.report.table;

import throwline.model.Field;
import throwline.report.Headlines;
import throwline.report.document.Figures;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.SetUpResult;
import throwline.words.Words;

/** Whether a landing ends before the field does, with and without the field's wind, bands considered. */
final class LandingFit {

    private final Field field;
    private final Words words;
    private final Figures figures;

    LandingFit(Field field, Words words, Figures figures) {
        this.field = field;
        this.words = words;
        this.figures = figures;
    }

    /** What stands on the left; the field's length must be known. */
    String heading() {
        return words.say("row.stops.field", figures.metres(length()));
    }

    /** Fits, fits with the wind, may not fit, or does not. */
    String cell(SetUpResult result) {
        Headline still = result.number(FlightQuantity.LANDING_DISTANCE);
        Headline windy = result.number(FlightQuantity.LANDING_DISTANCE_IN_WIND);
        if (!(still instanceof Headline.Known)) {
            return "";
        }
        if (field.wind() > 0 && !(windy instanceof Headline.Known)) {
            return words.say("row.fit.drifts");
        }
        if (fits(still)) {
            return words.say("row.fit.yes");
        }
        if (field.wind() > 0 && fits(windy)) {
            return words.say("row.fit.wind");
        }
        return words.say(mayFit(still) || mayFit(windy) ? "row.fit.perhaps" : "row.fit.no");
    }

    /** One of the same words for one landing. */
    String of(Headline landing) {
        return words.say(fits(landing) ? "row.fit.yes" : mayFit(landing) ? "row.fit.perhaps" : "row.fit.no");
    }

    private boolean fits(Headline landing) {
        return Headlines.known(landing).map(known -> known.high() <= length()).orElse(false);
    }

    private boolean mayFit(Headline landing) {
        return Headlines.known(landing).map(known -> known.low() <= length()).orElse(false);
    }

    private double length() {
        return field.length().orElse(Double.POSITIVE_INFINITY);
    }
}
