package throwline.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.GraphicsConfiguration;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;
import throwline.report.document.Figures;
import throwline.window.session.ModelDocument;
import throwline.window.session.Session;

/** The window: which model is open, whether it is saved, and its pages. */
final class MainWindow {

    private static final int COLUMNS = 100;
    private static final Dimension USUAL = new Dimension(1280, 800);

    /** Keys of the pages, in order. */
    static final List<String> PAGES =
            List.of("hand", "compare", "wants", "sticks", "model", "flights", "print", "trust");

    private final Desk desk;
    private final Program program;
    private final FileActions files;
    private final JFrame frame;
    private final JTabbedPane tabs = new JTabbedPane();
    private final JLabel title = new JLabel(" ");
    private final JLabel state = new JLabel(" ");
    private final JPanel banner;
    private final JButton save;
    private final JButton undo;
    private final JButton redo;
    private List<WindowPage> pages = List.of();
    private Consumer<HandView> shown = view -> {};
    private long painted;
    private long paintedAll;

    MainWindow(Desk desk, Program program) {
        this.desk = desk;
        this.program = program;
        frame = new JFrame(desk.say("window.title"));
        frame.setIconImages(Mark.all());
        files = new FileActions(desk, program, frame);
        save = Line.button(desk, "window.file.save", e -> files.save());
        undo = Line.button(desk, "window.edit.undo", e -> program.session().ifPresent(Session::undo));
        redo = Line.button(desk, "window.edit.redo", e -> program.session().ifPresent(Session::redo));
        banner = new Line(desk)
                .label("window.example.banner")
                .button("window.file.new", e -> files.newModel())
                .button("window.file.open", e -> files.open());
        frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                close();
            }

            @Override
            public void windowActivated(WindowEvent event) {
                files.look();
                lookAgain();
            }
        });
        JPanel content = new JPanel(new BorderLayout());
        content.add(head(), BorderLayout.NORTH);
        content.add(tabs, BorderLayout.CENTER);
        tabs.setName("pages");
        tabs.addChangeListener(e -> entered());
        frame.setContentPane(content);
        frame.setTransferHandler(new FileDrop(files::open));
        frame.setJMenuBar(new Menus(desk, program, files, this).bar());
        place();
    }

    private JPanel head() {
        JPanel head = new JPanel(new BorderLayout());
        head.setBorder(BorderFactory.createEmptyBorder(4, 10, 2, 10));
        Look.bold(title);
        state.setName("state");
        head.add(new Line(desk).with(title).with(state).far(), BorderLayout.WEST);
        head.add(new Line(desk).with(undo).with(redo).with(save), BorderLayout.EAST);
        JPanel middle = new JPanel();
        middle.add(banner);
        head.add(middle, BorderLayout.CENTER);
        return head;
    }

    JFrame frame() {
        return frame;
    }

    /** Where it stood last time, as far as that is still on a screen. */
    private void place() {
        var settings = desk.settings();
        Rectangle wanted = new Rectangle(
                settings.number("x", Integer.MIN_VALUE),
                settings.number("y", 0),
                settings.number("width", USUAL.width),
                settings.number("height", USUAL.height));
        Rectangle screen = frame.getGraphicsConfiguration().getBounds();
        frame.setSize(Math.min(screen.width, wanted.width), Math.min(screen.height, wanted.height));
        if (screen.contains(wanted)) {
            frame.setLocation(wanted.getLocation());
        } else {
            frame.setLocationRelativeTo(null);
        }
    }

    void appear() {
        frame.setVisible(true);
        int page = desk.settings().number("page", 0);
        if (page > 0 && page < tabs.getTabCount()) {
            tabs.setSelectedIndex(page);
        }
    }

    /** Shows another model. */
    void use(Session session) {
        Figures figures = new Figures(
                throwline.report.Page.of(
                        COLUMNS, true, false, session.document().good().display()),
                desk.words());
        int chosen = Math.max(0, tabs.getSelectedIndex());
        pages.forEach(WindowPage::close);
        pages = pages(session, figures);
        tabs.removeAll();
        for (int i = 0; i < pages.size(); i++) {
            WindowPage page = pages.get(i);
            String key = "window.page." + page.key();
            tabs.addTab(desk.say(key), null, page.component(), desk.say(key + ".tip"));
            tabs.setMnemonicAt(i, '1' + i);
        }
        tabs.setSelectedIndex(Math.min(chosen, tabs.getTabCount() - 1));
        session.onChange(this::changed);
        changed();
    }

    private List<WindowPage> pages(Session session, Figures figures) {
        List<WindowPage> all = new ArrayList<>();
        all.add(new HandPage(desk, session, figures));
        List<Supplier<WindowPage>> later = List.of(
                () -> new ComparePage(desk, session, figures, program),
                () -> new WantsPage(desk, session, figures, program),
                () -> new SticksPage(desk, session, figures),
                () -> new ModelPage(desk, session),
                () -> new FlightsPage(desk, session, figures, program),
                () -> new PrintPage(desk, session, program.flights()),
                () -> new TrustPage(desk, figures));
        for (int i = 0; i < later.size(); i++) {
            all.add(new LaterPage(PAGES.get(i + 1), later.get(i)));
        }
        return all;
    }

    Optional<HandPage> handPage() {
        return pages.stream()
                .filter(HandPage.class::isInstance)
                .map(HandPage.class::cast)
                .findFirst();
    }

    void go(int page) {
        if (page < tabs.getTabCount()) {
            tabs.setSelectedIndex(page);
            tabs.getComponentAt(page).transferFocus();
        }
    }

    private void entered() {
        int index = tabs.getSelectedIndex();
        if (index >= 0 && index < pages.size()) {
            pages.get(index).entered();
        }
    }

    /** Notes a flight. */
    void noteFlight() {
        files.noteFlight();
    }

    void changed() {
        pages.forEach(WindowPage::changed);
        program.session().ifPresent(this::headed);
    }

    private void headed(Session session) {
        ModelDocument document = session.document();
        String name = session.model().name();
        Optional<Path> place = document.place();
        title.setText(name);
        String key = place.isEmpty()
                ? "window.state.new"
                : document.isUnsaved() ? "window.state.unsaved" : "window.state.saved";
        String file = place.map(Path::getFileName).map(Path::toString).orElse("");
        state.setText(desk.say(key, file)
                + (document.problems().isEmpty() ? "" : desk.say("window.state.faulty"))
                + program.flights().state());
        state.setToolTipText(place.map(Path::toString).orElse(""));
        frame.setTitle(desk.say("window.titled", name));
        banner.setVisible(place.isEmpty() && document.title().equals(desk.say("window.example")));
        save.setEnabled(document.isUnsaved());
        undo.setEnabled(document.canUndo());
        redo.setEnabled(document.canRedo());
    }

    /** Numbers have come. */
    void show(HandView view) {
        pages.forEach(page -> page.show(view));
        shown.accept(view);
        // What is posted now runs once what was shown is painted.
        SwingUtilities.invokeLater(() -> {
            painted = System.nanoTime();
            paintedAll = view.finished() ? painted : paintedAll;
        });
    }

    /** Tells whoever measures what is shown. */
    void onShown(Consumer<HandView> listener) {
        shown = listener;
    }

    /** When numbers were last painted, or all of them, by the clock of {@link System#nanoTime}. */
    long paintedAt(boolean all) {
        return all ? paintedAll : painted;
    }

    /** A calculation failed: said once, and the window stays. */
    void failed(Throwable fault) {
        state.setText(desk.say("window.fault", fault.getClass().getSimpleName()));
    }

    /** Width that pictures get, points. */
    int pictureWidth() {
        return UIScale.scale(HandPage.PICTURES);
    }

    /** Pixels of a point of the window. */
    double scale() {
        GraphicsConfiguration configuration = frame.getGraphicsConfiguration();
        return configuration.getDefaultTransform().getScaleX();
    }

    /** Light or dark may have changed while the window was away. */
    private void lookAgain() {
        program.background().execute(() -> {
            boolean dark = Look.isSystemDark();
            SwingUtilities.invokeLater(() -> {
                if (desk.look().isOutOfDate(dark)) {
                    desk.look().putOn();
                    redraw();
                }
            });
        });
    }

    /** The look has changed. */
    void redraw() {
        program.session().ifPresent(this::use);
        program.ask();
    }

    void close() {
        if (!files.mayLeave()) {
            return;
        }
        var settings = desk.settings();
        settings.put("x", String.valueOf(frame.getX()));
        settings.put("y", String.valueOf(frame.getY()));
        settings.put("width", String.valueOf(frame.getWidth()));
        settings.put("height", String.valueOf(frame.getHeight()));
        settings.put("page", String.valueOf(tabs.getSelectedIndex()));
        frame.dispose();
        program.end();
    }
}
