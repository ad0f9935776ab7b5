package throwline.report;

/** The machine has no font, so that nothing can be drawn. */
public final class NoFontException extends RuntimeException {

    private static final long serialVersionUID = 1;

    /**
     * @param cause what the drawing classes said
     */
    public NoFontException(Throwable cause) {
        super(cause);
    }
}
