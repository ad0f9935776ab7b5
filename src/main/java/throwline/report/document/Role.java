package throwline.report.document;

/** Purpose of a piece of a document; how that looks is the renderer's job. */
public enum Role {
    /** To be read. */
    PLAIN,
    /** What is read first, larger than all else. */
    HEADLINE,
    /** What its neighbours belong to, or what differs from them. */
    STRONG,
    /** The band of a number. */
    BAND,
    /** More about what stands before it. */
    QUIET,
    /** What else is worth knowing. */
    REMARK,
    /** What was assumed because it was not given. */
    ASSUMPTION,
    /** What to take care of in any case. */
    CAUTION,
    /** What may hurt; said in words and marked. */
    DANGER,
    /** Something that has changed since an earlier answer. */
    CHANGED,
    /** A box to tick. */
    TICK,
    /** Room to write in. */
    BLANK
}
