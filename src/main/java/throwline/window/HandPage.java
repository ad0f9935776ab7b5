package throwline.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import throwline.model.AirfoilName;
import throwline.report.chart.SectionShape;
import throwline.report.document.Figures;
import throwline.section.Airfoil;
import throwline.window.session.Movable;
import throwline.window.session.Session;

/** The set-up at hand: its surfaces on the left, what the model does with it beside them. */
final class HandPage implements WindowPage {

    /** Widths of the outer columns, points. */
    private static final int LEFT = 330;

    /** Numbers and pictures stand beside each other from this width on, points. */
    private static final int ROOM = 1180;

    static final int PICTURES = 384;

    /** Height of the sentences: a share of the page, between these, points. */
    private static final double IN_SHORT = 0.24;

    private static final int LEAST_IN_SHORT = 92;
    private static final int MOST_IN_SHORT = 150;

    private final Desk desk;
    private final Session session;
    private final Figures figures;
    private final JPanel page = new JPanel(new BorderLayout(8, 6));
    private final Column surfaces = new Column(6);
    private final Column shots = new Column(6);
    private final List<SurfaceCard> cards = new ArrayList<>();
    /** Surfaces that there are cards for, and whether there is a motor. */
    private List<String> carded = List.of();

    private final List<PictureView> pictures = new ArrayList<>();
    private final InShortPane inShort;
    private final NumbersTable numbers;
    private final JLabel wrong = new JLabel(" ");
    private final ThrottleCard throttle;
    private final ConditionsBar conditions;
    private final SetUpBar setUps;
    private final JComponent numbersSide;
    private final JComponent picturesSide;
    private final JTabbedPane behind = new JTabbedPane();
    private Optional<Boolean> arrangement = Optional.empty();
    private Optional<HandView> shown = Optional.empty();

    HandPage(Desk desk, Session session, Figures figures) {
        this.desk = desk;
        this.session = session;
        this.figures = figures;
        inShort = new InShortPane(desk);
        numbers = new NumbersTable(desk);
        throttle = new ThrottleCard(desk, session);
        conditions = new ConditionsBar(desk, session, this::said);
        setUps = new SetUpBar(desk, session, this::said);
        page.setBorder(BorderFactory.createEmptyBorder(6, 8, 6, 8));
        page.add(conditions, BorderLayout.NORTH);
        page.add(left(), BorderLayout.WEST);
        numbersSide = middle();
        picturesSide = right();
        arrange();
        page.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                arrange();
            }
        });
        wrong.setForeground(desk.look().danger());
        wrong.setName("wrong");
        page.add(wrong, BorderLayout.SOUTH);
        changed();
    }

    @Override
    public String key() {
        return "hand";
    }

    @Override
    public JComponent component() {
        return page;
    }

    SetUpBar setUps() {
        return setUps;
    }

    private JComponent left() {
        JPanel left = new JPanel(new BorderLayout(0, 8));
        left.add(setUps, BorderLayout.NORTH);
        left.add(surfaces.scrolled(), BorderLayout.CENTER);
        left.setPreferredSize(new Dimension(UIScale.scale(LEFT), 10));
        return left;
    }

    /** Numbers and pictures beside each other where there is room, else one behind the other. */
    private void arrange() {
        boolean room = page.getWidth() == 0 || page.getWidth() >= UIScale.scale(ROOM);
        if (arrangement.equals(Optional.of(room))) {
            return;
        }
        arrangement = Optional.of(room);
        page.remove(numbersSide);
        page.remove(picturesSide);
        page.remove(behind);
        behind.removeAll();
        if (room) {
            page.add(numbersSide, BorderLayout.CENTER);
            page.add(picturesSide, BorderLayout.EAST);
        } else {
            behind.addTab(desk.say("window.hand.numbers.tab"), numbersSide);
            behind.addTab(desk.say("window.hand.pictures.tab"), picturesSide);
            page.add(behind, BorderLayout.CENTER);
        }
        page.revalidate();
        page.repaint();
    }

    private JComponent middle() {
        JPanel middle = new JPanel(new BorderLayout(0, 6));
        JScrollPane said = new JScrollPane(inShort) {
            private static final long serialVersionUID = 1;

            @Override
            public Dimension getPreferredSize() {
                int share = (int) Math.round(IN_SHORT * page.getHeight());
                return new Dimension(
                        10, Math.max(UIScale.scale(LEAST_IN_SHORT), Math.min(UIScale.scale(MOST_IN_SHORT), share)));
            }
        };
        middle.add(plain(said), BorderLayout.NORTH);
        JScrollPane table = new JScrollPane(numbers);
        numbers.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                how(numbers.columnAtPoint(event.getPoint()) == 3 ? 1 : 0);
            }
        });
        numbers.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                .put(javax.swing.KeyStroke.getKeyStroke("ENTER"), "how");
        numbers.getActionMap().put("how", Actions.of(() -> how(numbers.getSelectedColumn() == 3 ? 1 : 0)));
        middle.add(table, BorderLayout.CENTER);
        JLabel key = new JLabel(desk.say("window.hand.close.key"));
        key.setForeground(Look.quiet());
        JCheckBox all = new JCheckBox(
                desk.say("window.hand.all"), desk.settings().get("all").equals("yes"));
        all.setName("all");
        numbers.showAll(all.isSelected());
        all.addActionListener(e -> {
            desk.settings().put("all", all.isSelected() ? "yes" : "");
            numbers.showAll(all.isSelected());
        });
        middle.add(new Line(desk).with(key).far().with(all), BorderLayout.SOUTH);
        return middle;
    }

    private JComponent right() {
        JScrollPane scroll = shots.scrolled();
        scroll.setPreferredSize(new Dimension(UIScale.scale(PICTURES + 14), 10));
        return scroll;
    }

    /** A pane without a border that scrolls up and down only. */
    static JScrollPane plain(JScrollPane scroll) {
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getVerticalScrollBar().setUnitIncrement(UIScale.scale(16));
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        return scroll;
    }

    /** Opens how a number was found. */
    private void how(int column) {
        int row = numbers.chosenRow();
        shown.filter(view -> row >= 0)
                .ifPresent(
                        view -> FactsDialog.show(page, desk, figures, view.rows(), new FactsDialog.At(0, row, column)));
    }

    private void said(Optional<String> refused) {
        wrong.setText(refused.map(Sentence::broken).orElse(" "));
    }

    @Override
    public void changed() {
        conditions.changed();
        setUps.changed();
        List<Movable> movables = session.movables();
        boolean powered = session.model().isPowered(session.pack());
        List<String> wanted =
                new ArrayList<>(movables.stream().map(Movable::name).toList());
        wanted.add(String.valueOf(powered));
        if (!wanted.equals(carded)) {
            carded = wanted;
            surfaces.removeAll();
            cards.clear();
            for (Movable movable : movables) {
                SurfaceCard card = new SurfaceCard(desk, session, figures, movable, shape(movable));
                cards.add(card);
                surfaces.add(card);
            }
            if (powered) {
                surfaces.add(throttle.component());
            }
            surfaces.revalidate();
        }
        throttle.changed();
        for (int i = 0; i < cards.size(); i++) {
            Movable movable = movables.get(i);
            if (!session.isHeld()) {
                cards.get(i).show(movable, shape(movable));
            }
            cards.get(i).show(session.setUp(), session.before());
        }
    }

    private SectionShape shape(Movable movable) {
        AirfoilName name = session.model().wing().surface(movable.name()).isPresent()
                ? session.model().wing().sections().get(0).airfoil()
                : session.model().tail().airfoil();
        Airfoil airfoil = session.document()
                .airfoils()
                .find(name)
                .orElseThrow(() -> new IllegalStateException("no airfoil " + name.text()));
        return new SectionShape(airfoil, movable.hinge());
    }

    @Override
    public void show(HandView view) {
        shown = Optional.of(view);
        inShort.show(view.inShort());
        throttle.show(view.powered());
        numbers.show(view);
        while (pictures.size() < view.pictures().size()) {
            PictureView picture = new PictureView();
            pictures.add(picture);
            shots.add(picture);
        }
        for (int i = 0; i < pictures.size(); i++) {
            boolean here = i < view.pictures().size();
            pictures.get(i).setVisible(here);
            if (here) {
                pictures.get(i).show(view.pictures().get(i));
            }
        }
    }
}
