package throwline.window;

import java.awt.Dimension;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.JEditorPane;
import javax.swing.text.DefaultCaret;

/** Sentences to take away, what may hurt on top. */
final class InShortPane extends JEditorPane {

    private static final long serialVersionUID = 1;

    private final transient Desk desk;
    private String shown = "";

    InShortPane(Desk desk) {
        super("text/html", "");
        this.desk = desk;
        setEditable(false);
        setOpaque(false);
        setName("in short");
        putClientProperty(HONOR_DISPLAY_PROPERTIES, true);
        if (getCaret() instanceof DefaultCaret caret) {
            caret.setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
        }
        getAccessibleContext().setAccessibleName(desk.say("window.hand.in-short"));
    }

    void show(List<HandView.Said> sentences) {
        String danger = String.format("#%06x", desk.look().danger().getRGB() & 0xFFFFFF);
        String text = sentences.stream()
                .map(said -> said.danger()
                        ? "<p style='margin:0 0 3px 0;color:" + danger + "'>! <b>" + Sentence.escaped(said.lead())
                                + "</b> " + Sentence.escaped(said.text()) + "</p>"
                        : "<p style='margin:0 0 3px 0'><b>" + Sentence.escaped(said.lead()) + "</b> "
                                + Sentence.escaped(said.text()) + "</p>")
                .collect(Collectors.joining());
        if (!text.equals(shown)) {
            shown = text;
            setText("<html><body>" + text + "</body></html>");
        }
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(10, 10);
    }
}
