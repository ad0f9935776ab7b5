package throwline.validation;

import java.util.Arrays;
import java.util.Optional;

/** Quantities that statistics are made of, and how their errors are counted. */
public enum Figure {
    /** Maximum lift coefficient of a section, share. */
    SECTION_MAX_LIFT("section.maxLift", Scale.SHARE),
    /** Stall angle of a section, degrees. */
    SECTION_STALL_ANGLE("section.stallAngle", Scale.DEGREES),
    /** Zero-lift angle of a section, degrees. */
    SECTION_ZERO_LIFT("section.zeroLiftAngle", Scale.DEGREES),
    /** Drag of a section at a lift, share. */
    SECTION_DRAG("section.drag", Scale.SHARE),
    /** The same below a Reynolds number of 80 000. */
    SECTION_DRAG_SLOW("section.drag.slow", Scale.SHARE),
    /** Lowest steady speed, share; from maximum lift by the root. */
    STALL_SPEED("stallSpeed", Scale.SHARE),
    /** Stall speed of one set-up over that of another, share; errors that both have in common are gone. */
    STALL_SPEED_RATIO("stallSpeed ratio", Scale.SHARE),
    /** Descent angle with nothing moved, share; from drag over lift. */
    DESCENT_CLEAN("descentAngle.clean", Scale.SHARE),
    /** Descent angle with surfaces moved, share. */
    DESCENT_MOVED("descentAngle.moved", Scale.SHARE),
    /** Best glide ratio with nothing moved, share. */
    GLIDE_CLEAN("bestGlideRatio.clean", Scale.SHARE),
    /** Best glide ratio with surfaces moved, share. */
    GLIDE_MOVED("bestGlideRatio.moved", Scale.SHARE),
    /** Steady speed pointing straight down, share. */
    NOSE_DOWN("noseDownSpeed", Scale.SHARE),
    /** What the elevator does, share of its moment. */
    ELEVATOR("elevator", Scale.SHARE),
    /** What full stick does, share of the rolling moment or rate. */
    ROLL_RATE("rollRate", Scale.SHARE);

    private final String key;
    private final Scale scale;

    /** How errors are counted. */
    private enum Scale {
        SHARE,
        DEGREES
    }

    Figure(String key, Scale scale) {
        this.key = key;
        this.scale = scale;
    }

    /** Its name in the file of bands. */
    public String key() {
        return key;
    }

    /** True where errors are shares of the measured value, false where they are degrees. */
    public boolean isShare() {
        return scale == Scale.SHARE;
    }

    /** Positive where the prediction is too large. */
    double error(double measured, double predicted) {
        return isShare() ? predicted / measured - 1 : predicted - measured;
    }

    /** The figure of a key. */
    static Optional<Figure> of(String key) {
        return Arrays.stream(values()).filter(f -> f.key.equals(key)).findFirst();
    }
}
