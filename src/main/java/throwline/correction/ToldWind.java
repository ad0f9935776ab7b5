package throwline.correction;

import throwline.flight.WindProfile;
import throwline.notes.FlownDay;
import throwline.notes.FlownDay.Where;
import throwline.notes.FlownDay.Wind;

/**
 * A wind as told, at the height where models are flown.
 *
 * @param speed m/s
 * @param sd its standard deviation, m/s (PRACTICE, methods manual 21.4)
 */
record ToldWind(double speed, double sd) {

    /** Height at which models are flown, and that of a wind told at the ground, m (PRACTICE). */
    private static final double FLOWN = 20;

    private static final double GROUND = 2;

    private static final double LEAST = 1;
    private static final double SHARE = 0.4;
    private static final double ANEMOMETER = 0.5;
    private static final double UPWARDS = 0.2;
    private static final double FORECAST = 0.6;
    private static final double UNTOLD = 1.5;
    private static final double LOG = 0.3;

    /** The wind of a day; where nothing was told, that of the field. */
    static ToldWind of(FlownDay day, double field) {
        return day.wind().map(ToldWind::of).orElseGet(() -> new ToldWind(field, Math.max(UNTOLD, field)));
    }

    private static ToldWind of(Wind wind) {
        double sd =
                switch (wind.toldBy()) {
                    case ANEMOMETER -> ANEMOMETER;
                    case LOG -> LOG;
                    case FORECAST -> Math.max(2 * LEAST, FORECAST * wind.speed());
                    case FEEL, FLAG -> Math.max(LEAST, SHARE * wind.speed());
                };
        if (wind.where() == Where.MODEL) {
            return new ToldWind(wind.speed(), sd);
        }
        WindProfile profile = new WindProfile(wind.speed());
        double higher = profile.at(FLOWN) / profile.at(GROUND);
        double there = Double.isFinite(higher) ? higher : 1;
        return new ToldWind(wind.speed() * there, Math.hypot(sd * there, UPWARDS * wind.speed() * there));
    }
}
