package throwline.window;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;

/** Actions of keys and menus. */
final class Actions {

    private Actions() {}

    static Action of(Runnable run) {
        return new AbstractAction() {
            private static final long serialVersionUID = 1;

            @Override
            public void actionPerformed(ActionEvent event) {
                run.run();
            }
        };
    }
}
