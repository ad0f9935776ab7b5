package throwline.window;

import java.awt.Component;
import javax.swing.JOptionPane;
import throwline.window.session.Settings;
import throwline.words.Words;

/**
 * Means that every view works with.
 *
 * @param words every sentence that a person reads
 * @param settings what the window remembers
 * @param look how it looks
 */
record Desk(Words words, Settings settings, Look look) {

    String say(String key, Object... arguments) {
        return words.say(key, arguments);
    }

    /** Asks for a line of text; empty where the person gives up. */
    String ask(Component over, String question, String proposal) {
        Object answer = JOptionPane.showInputDialog(
                over, question, say("window.title"), JOptionPane.PLAIN_MESSAGE, null, null, proposal);
        return answer instanceof String text ? text.strip() : "";
    }

    /** Asks for one of several ways; the index of the answer, below zero where the person gives up. */
    int choose(Component over, String question, String... ways) {
        return JOptionPane.showOptionDialog(
                over,
                question,
                say("window.title"),
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.PLAIN_MESSAGE,
                null,
                ways,
                ways[0]);
    }

    /** Says something that must be read. */
    void tell(Component over, String sentence) {
        JOptionPane.showMessageDialog(over, sentence, say("window.title"), JOptionPane.PLAIN_MESSAGE);
    }
}
