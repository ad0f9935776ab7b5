package throwline.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JPanel;
import throwline.input.ReadModel;
import throwline.window.session.Session;
import throwline.window.sketch.MeasuredKeys;
import throwline.window.sketch.Sketch;
import throwline.window.sketch.SketchText;

/** The drawing beside the values of a model: it points at what the chosen one measures. */
final class SketchCard extends JPanel {

    private static final long serialVersionUID = 1;

    private static final int WIDTH = 400;

    private final transient Desk desk;
    private final transient Session session;
    private final transient MeasuredKeys keys = new MeasuredKeys();
    private final SketchCanvas canvas;
    private final JLabel title = new JLabel(" ");

    SketchCard(Desk desk, Session session) {
        super(new BorderLayout(0, 4));
        this.desk = desk;
        this.session = session;
        canvas = new SketchCanvas(desk.look());
        canvas.setName("sketch");
        title.setForeground(Look.quiet());
        add(title, BorderLayout.NORTH);
        add(canvas, BorderLayout.CENTER);
        setPreferredSize(new Dimension(UIScale.scale(WIDTH), 10));
    }

    /**
     * Points at a value of the file, or at nothing.
     *
     * @param row in the table of keys; empty for none
     * @param path of the value
     */
    void point(String row, List<String> path) {
        ReadModel.Project good = session.document().good();
        SketchText text = new SketchText(desk.words(), good.display());
        Optional<Sketch> pointed =
                keys.of(row, path, good.model(), session.document().airfoils());
        Sketch sketch = pointed.orElseGet(() -> keys.plain(good.model()));
        title.setText(pointed.isPresent() ? text.title(sketch) : desk.say("window.sketch.nothing"));
        canvas.show(sketch, text);
    }
}
