package throwline.report.table;

import throwline.model.Field;
import throwline.report.Headlines;
import throwline.study.FieldAnswer;
import throwline.study.Headline;
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
    String cell(FieldAnswer answer) {
        if (!(answer.landing() instanceof Headline.Known)) {
            return "";
        }
        if (field.wind() > 0 && !(answer.landingInWind() instanceof Headline.Known)) {
            return words.say("row.fit.drifts");
        }
        if (fits(answer.landing())) {
            return words.say("row.fit.yes");
        }
        if (field.wind() > 0 && fits(answer.landingInWind())) {
            return words.say("row.fit.wind");
        }
        return words.say(mayFit(answer.landing()) || mayFit(answer.landingInWind()) ? "row.fit.perhaps" : "row.fit.no");
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
