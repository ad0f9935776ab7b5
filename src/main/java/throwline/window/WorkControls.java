package throwline.window;

import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JProgressBar;

/** Progress and stop button of long work, seen while it runs. */
final class WorkControls {

    private final JProgressBar progress = new JProgressBar();
    private final JButton stop;

    /**
     * @param desk words
     * @param work what is stopped
     * @param state says so
     */
    WorkControls(Desk desk, Work work, JLabel state) {
        stop = Line.button(desk, "window.stop", e -> {
            work.stop();
            busy(false);
            state.setText(desk.say("window.stopped"));
        });
        progress.setIndeterminate(true);
    }

    JProgressBar progress() {
        return progress;
    }

    JButton stop() {
        return stop;
    }

    /** Shows or hides both. */
    void busy(boolean now) {
        progress.setVisible(now);
        stop.setVisible(now);
        progress.revalidate();
    }
}
