package throwline.study;

import java.util.Optional;
import throwline.model.Field;

/** Fit of a landing to the length of the field, bands considered. */
public enum FieldFit {
    /** In still air it ends on the field all across its band. */
    FITS,
    /** It does so against the field's wind only. */
    FITS_WITH_WIND,
    /** Part of its band lies on the field. */
    MAY_FIT,
    /** No part of its band does. */
    TOO_SHORT,
    /** The wind is faster than the model, which drifts back. */
    DRIFTS_BACK;

    /** True where the landing is not to be tried. */
    public boolean isDanger() {
        return this == TOO_SHORT || this == DRIFTS_BACK;
    }

    /**
     * Whether a set-up's landing fits; empty where the field's length or the landing is not known.
     *
     * @param result the set-up's flight
     * @param field the field, its length and its wind
     */
    public static Optional<FieldFit> of(SetUpResult result, Field field) {
        if (field.length().isEmpty()) {
            return Optional.empty();
        }
        double length = field.length().getAsDouble();
        Headline still = result.number(FlightQuantity.LANDING_DISTANCE);
        Headline windy = result.number(FlightQuantity.LANDING_DISTANCE_IN_WIND);
        boolean wind = field.wind() > 0;
        if (!(still instanceof Headline.Known calm)) {
            return Optional.empty();
        }
        if (wind && !(windy instanceof Headline.Known)) {
            return Optional.of(DRIFTS_BACK);
        }
        FieldFit without = of(calm, length);
        if (without == FITS || !wind) {
            return Optional.of(without);
        }
        FieldFit with = of((Headline.Known) windy, length);
        return Optional.of(with == FITS ? FITS_WITH_WIND : without == MAY_FIT ? MAY_FIT : with);
    }

    /** Whether one landing fits on a length, m: fits, may fit or too short. */
    public static FieldFit of(Headline.Known landing, double length) {
        return landing.high() <= length ? FITS : landing.low() <= length ? MAY_FIT : TOO_SHORT;
    }
}
