package throwline.section;

import throwline.model.Hinge;

/** Loss of a surface to air that passes at the hinge line. */
public final class HingeGap {

    private HingeGap() {}

    /**
     * Share of its angle that a surface acts like: 0.85 with a gap of half a per cent of the chord (Hoerner's text on a NACA
     * 0015, read); a nearly closed hinge 0.96 (practice).
     */
    public static double share(Hinge hinge) {
        return switch (hinge) {
            case TAPED -> 1;
            case LIVING -> 0.96;
            case OPEN -> 0.85;
        };
    }
}
