package throwline.window;

/** Sentences as labels show them: broken into lines. */
final class Sentence {

    private Sentence() {}

    /** A sentence that a label breaks into lines. */
    static String broken(String text) {
        return "<html>" + escaped(text) + "</html>";
    }

    /** Letters that mean nothing to a label's own markup. */
    static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
