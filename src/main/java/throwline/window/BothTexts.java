package throwline.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import javax.swing.BorderFactory;
import javax.swing.JOptionPane;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTextArea;
import javax.swing.text.BadLocationException;
import javax.swing.text.DefaultHighlighter;

/** Two texts of one model beside each other; lines that only one of them has are marked. */
final class BothTexts {

    private BothTexts() {}

    static void show(Component over, Desk desk, String mine, String other) {
        JSplitPane both = new JSplitPane(
                JSplitPane.HORIZONTAL_SPLIT,
                area(desk.say("window.other.mine.text"), mine, other, desk),
                area(desk.say("window.other.disk.text"), other, mine, desk));
        both.setResizeWeight(0.5);
        both.setPreferredSize(new Dimension(UIScale.scale(1000), UIScale.scale(520)));
        JOptionPane.showMessageDialog(over, both, desk.say("window.title"), JOptionPane.PLAIN_MESSAGE);
    }

    private static JScrollPane area(String title, String text, String other, Desk desk) {
        JTextArea area = new JTextArea(text);
        area.setEditable(false);
        area.setFont(new Font(Font.MONOSPACED, Font.PLAIN, area.getFont().getSize()));
        area.getAccessibleContext().setAccessibleName(title);
        Set<String> known = new HashSet<>(Arrays.asList(other.split("\\R", -1)));
        Color mark = Look.mix(area.getBackground(), desk.look().up(), 0.35);
        try {
            for (int i = 0; i < area.getLineCount(); i++) {
                int start = area.getLineStartOffset(i);
                int end = area.getLineEndOffset(i);
                if (!known.contains(text.substring(start, end).replaceAll("\\R", ""))) {
                    area.getHighlighter()
                            .addHighlight(start, end, new DefaultHighlighter.DefaultHighlightPainter(mark));
                }
            }
        } catch (BadLocationException e) {
            throw new IllegalStateException(e);
        }
        area.setCaretPosition(0);
        JScrollPane scroll = new JScrollPane(area);
        scroll.setBorder(BorderFactory.createTitledBorder(title));
        return scroll;
    }
}
