package throwline.model;

/** Place of the horizontal tail. */
public enum TailPosition {
    /** On the body or the boom. */
    ON_THE_BODY,
    /** Part way up the fin. */
    ON_THE_FIN,
    /** On top of the fin. */
    ON_TOP_OF_THE_FIN
}
