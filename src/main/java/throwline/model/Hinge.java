package throwline.model;

/** Closure of a surface's hinge line. */
public enum Hinge {
    /** Tape or film over the whole hinge line: no air passes. */
    TAPED,
    /** A skin or cord hinge: nearly closed. */
    LIVING,
    /** Pin hinges with a gap of about half a per cent of the chord. */
    OPEN
}
