package throwline.window;

import javax.swing.JComponent;

/** A page of the window, about one open model. */
interface WindowPage {

    /** Key of its name and its tip: {@code window.page.KEY}. */
    String key();

    /** What is shown. */
    JComponent component();

    /** Something has changed in the session; a page that is looked at is entered anew. */
    default void changed() {
        if (component().isShowing()) {
            entered();
        }
    }

    /** Numbers have come. */
    default void show(HandView view) {}

    /** It is looked at now. */
    default void entered() {}

    /** It is not shown any more; what it still works out ends. */
    default void close() {}
}
