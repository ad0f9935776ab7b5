package throwline.report.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import throwline.model.Model;
import throwline.model.Surface;
import throwline.report.EdgeThrow;
import throwline.report.Headlines;
import throwline.report.document.Figures;
import throwline.section.Airfoil;
import throwline.study.SetUpResult;
import throwline.study.SetUpResult.FirstStall;
import throwline.study.SetUpResult.Side;

/** Draws one set-up: load, model from above and sections, all of one scale across. Places in points. */
final class SetUpView extends Overlay {

    private static final long serialVersionUID = 1;

    private static final double LOAD = 96;
    private static final double GAP = 16;
    private static final double SIDE = 34;
    private static final double TALLEST = 300;
    private static final double LABEL = 15;
    private static final double SECTION = 92;
    private static final double MARK = 5;
    private static final Stroke OUTLINE = new BasicStroke(1.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);

    private final transient ChartQuestion question;
    private final transient SetUpResult result;
    private final transient HouseStyle.Look look;
    private final double most;
    private final transient Map<String, Airfoil> airfoils;
    private final transient Figures figures;
    private final double nose;
    private final double length;
    private final double scale;

    SetUpView(ChartQuestion question, int index, double most, Map<String, Airfoil> airfoils, Figures figures) {
        this.question = question;
        this.result = question.setUps().get(index);
        this.look = HouseStyle.look(index);
        this.most = most;
        this.airfoils = Map.copyOf(airfoils);
        this.figures = figures;
        Model model = question.model();
        nose = Math.max(model.body().nose(), 0);
        double end = Math.max(
                model.body().length() - model.body().nose(),
                model.tail().arm() + model.tail().chord());
        length = nose + end;
        double widest = Math.max(model.wing().span(), model.tail().span());
        scale = Math.min((question.layout().width() - 2 * SIDE) / widest, TALLEST / length);
    }

    /** Points that the view needs from top to bottom. */
    int height() {
        return (int) Math.ceil(LOAD + GAP + length * scale + 2 * LABEL + sectionRows() * SECTION);
    }

    private List<Surface> surfaces() {
        return question.model().wing().surfaces();
    }

    private int sectionRows() {
        return (surfaces().size() + 1) / 2;
    }

    @Override
    void paint(Graphics2D g2, Ink ink, Frame frame) {
        Rectangle2D area = frame.area();
        double top = area.getMinY();
        PlanOutline.Place place = new PlanOutline.Place(area.getCenterX(), top + LOAD + GAP + nose * scale, scale);
        load(g2, ink, place, top);
        plan(g2, ink, place);
        firstStall(g2, ink, place, top);
        double below = top + LOAD + GAP + length * scale + 2 * LABEL;
        for (int i = 0; i < surfaces().size(); i++) {
            int row = i / 2;
            Rectangle2D cell = new Rectangle2D.Double(
                    area.getMinX() + (i % 2) * area.getWidth() / 2,
                    below + row * SECTION,
                    area.getWidth() / 2,
                    SECTION);
            section(g2, ink, surfaces().get(i), cell);
        }
    }

    private double reached(Surface surface) {
        return surface.reached(result.setUp().deflection(surface.name()));
    }

    private void load(Graphics2D g2, Ink ink, PlanOutline.Place place, double top) {
        double foot = top + LOAD;
        double unit = (LOAD - 14) / most;
        double left = place.x(-question.model().wing().semiSpan());
        double right = place.x(question.model().wing().semiSpan());
        g2.setStroke(HouseStyle.THIN);
        for (int lift = 0; lift <= most; lift++) {
            double y = foot - lift * unit;
            g2.setPaint(lift == 0 ? HouseStyle.QUIET_INK : HouseStyle.GRID);
            g2.draw(new Line2D.Double(left, y, right, y));
            ink.text(String.valueOf(lift), HouseStyle.SMALL, HouseStyle.INK, left - 6, y, Ink.Side.LEFT);
        }
        if (result.load().isEmpty()) {
            return;
        }
        Path2D carried = new Path2D.Double();
        Path2D limit = new Path2D.Double();
        boolean first = true;
        for (SetUpResult.LoadStation station : result.load()) {
            point(carried, place.x(station.at()), foot - station.lift() * unit, first);
            point(limit, place.x(station.at()), foot - station.limit() * unit, first);
            first = false;
        }
        Path2D filled = new Path2D.Double(carried);
        filled.lineTo(right, foot);
        filled.lineTo(left, foot);
        filled.closePath();
        g2.setPaint(look.band());
        g2.fill(filled);
        g2.setPaint(HouseStyle.QUIET_INK);
        g2.setStroke(HouseStyle.look(3).line());
        g2.draw(limit);
        g2.setPaint(look.color());
        g2.setStroke(look.whisker());
        g2.draw(carried);
        names(ink, place, foot, unit);
    }

    /** Names of both curves on the left wing: over the one, inside the other where it is highest. */
    private void names(Ink ink, PlanOutline.Place place, double foot, double unit) {
        List<SetUpResult.LoadStation> left =
                result.load().stream().filter(station -> station.at() < 0).toList();
        double highest = left.stream()
                .limit(left.size() / 2)
                .mapToDouble(SetUpResult.LoadStation::limit)
                .max()
                .orElse(0);
        double tip = place.x(-question.model().wing().semiSpan());
        String canCarry = question.words().say("chart.load.limit");
        double above = foot - highest * unit - 9;
        ink.text(canCarry, HouseStyle.SMALL, HouseStyle.QUIET_INK, tip + 4, above, Ink.Side.RIGHT);
        left.stream()
                .max(Comparator.comparingDouble(SetUpResult.LoadStation::lift))
                .ifPresent(station -> ink.text(
                        question.words().say("chart.load.carried"),
                        HouseStyle.SMALL,
                        HouseStyle.INK,
                        Math.min(place.x(station.at()), place.middle() - 40),
                        foot - station.lift() * unit / 2,
                        Ink.Side.MIDDLE));
    }

    private static void point(Path2D path, double x, double y, boolean first) {
        if (first) {
            path.moveTo(x, y);
        } else {
            path.lineTo(x, y);
        }
    }

    private void plan(Graphics2D g2, Ink ink, PlanOutline.Place place) {
        Model model = question.model();
        PlanOutline outline = new PlanOutline(model, place);
        ThrowShade shade = new ThrowShade(g2, OUTLINE);
        shade.still(outline.body());
        shade.still(outline.wing());
        for (Surface surface : surfaces()) {
            for (int side = -1; side <= 1; side += 2) {
                shade.moved(outline.surface(surface, side), reached(surface));
            }
        }
        shade.still(outline.tail());
        Headlines.known(result.elevator()).ifPresent(known -> shade.moved(outline.elevator(), known.value()));
        for (int i = 0; i < surfaces().size(); i++) {
            label(ink, place, surfaces().get(i), i);
        }
        elevator(ink, place);
    }

    /** Angle on the right wing, millimetres on the left, below the trailing edge; a row a surface. */
    private void label(Ink ink, PlanOutline.Place place, Surface surface, int row) {
        Model model = question.model();
        double lowest = surfaces().stream()
                .mapToDouble(other -> Math.max(edge(other.from()), edge(other.to())))
                .max()
                .orElse(0);
        double y = place.y(lowest) + LABEL * (row + 0.8);
        double middle = (surface.from() + surface.to()) / 2;
        double angle = reached(surface);
        EdgeThrow edge = new EdgeThrow(model.wing().throwChord(surface));
        String name = question.words().say("chart.setup.surface", surface.name(), figures.deflection(angle));
        beside(ink, name, middle, y, place);
        if (angle != 0) {
            beside(ink, figures.edge(angle, edge), -middle, y, place);
        }
    }

    /** Text with its middle near a distance from the middle, clear of the body. */
    private void beside(Ink ink, String text, double at, double y, PlanOutline.Place place) {
        double clear = question.model().body().width() / 2 * scale + 6 + ink.width(text, HouseStyle.SMALL) / 2;
        double away = Math.max(clear, Math.abs(at) * scale);
        inside(ink, text, place.middle() + Math.copySign(away, at), y, place);
    }

    private double edge(double y) {
        return question.model().wing().leadingEdgeAt(y)
                + question.model().wing().chordAt(y);
    }

    /** Text with its middle near a place, moved so far that it stays on the page. */
    private void inside(Ink ink, String text, double middle, double y, PlanOutline.Place place) {
        double half = ink.width(text, HouseStyle.SMALL) / 2;
        double reach = question.layout().width() / 2.0 - 8 - half;
        double x = Math.max(place.middle() - reach, Math.min(place.middle() + reach, middle));
        ink.textOnGround(text, HouseStyle.SMALL, HouseStyle.INK, x, y, Ink.Side.MIDDLE);
    }

    private void elevator(Ink ink, PlanOutline.Place place) {
        Model model = question.model();
        double chord = model.tail().throwChord();
        Headlines.known(result.elevator()).ifPresent(known -> {
            String text =
                    question.words().say("chart.setup.elevator", figures.edge(known.value(), new EdgeThrow(chord)));
            double y = place.y(model.tail().arm() + model.tail().chord()) + LABEL;
            inside(ink, text, place.middle(), y, place);
        });
    }

    /** A line from the load down to the wing, with a mark on the wing. */
    private void firstStall(Graphics2D g2, Ink ink, PlanOutline.Place place, double top) {
        FirstStall stall = result.firstStall();
        if (stall.manner() == SetUpResult.Manner.NOT_REACHED || result.load().isEmpty()) {
            return;
        }
        double distance = stall.spanFraction() * question.model().wing().semiSpan();
        if (stall.side() != Side.RIGHT) {
            stallMark(g2, place, -distance, top);
        }
        if (stall.side() != Side.LEFT) {
            stallMark(g2, place, distance, top);
        }
        double at = place.x(stall.side() == Side.LEFT ? -distance : distance);
        String text = question.words().say("chart.load.first");
        double right = at + 2 * MARK;
        boolean fits = right + ink.width(text, HouseStyle.SMALL)
                <= place.middle() + question.layout().width() / 2.0 - 6;
        ink.textOnGround(
                text,
                HouseStyle.SMALL,
                HouseStyle.INK,
                fits ? right : at - 2 * MARK,
                top + LOAD + GAP / 2,
                fits ? Ink.Side.RIGHT : Ink.Side.LEFT);
    }

    private void stallMark(Graphics2D g2, PlanOutline.Place place, double at, double top) {
        double x = place.x(at);
        double chord = question.model().wing().chordAt(at);
        double foot = place.y(question.model().wing().leadingEdgeAt(at) + chord / 4);
        g2.setPaint(HouseStyle.INK);
        g2.setStroke(HouseStyle.THIN);
        g2.draw(new Line2D.Double(x, top, x, foot));
        Path2D mark = new Path2D.Double();
        mark.moveTo(x, foot + 2 * MARK);
        mark.lineTo(x + MARK, foot);
        mark.lineTo(x - MARK, foot);
        mark.closePath();
        g2.fill(mark);
    }

    private void section(Graphics2D g2, Ink ink, Surface surface, Rectangle2D cell) {
        String name = question.model().wing().sections().get(0).airfoil().text();
        Airfoil airfoil = airfoils.get(name);
        if (airfoil == null) {
            return;
        }
        double chord = cell.getWidth() - 48;
        AffineTransform place =
                AffineTransform.getTranslateInstance(cell.getMinX() + 12, cell.getMinY() + 0.38 * SECTION);
        place.scale(chord, chord);
        SectionOutline outline = new SectionOutline(airfoil.thickness(), airfoil.camber(), 1 - surface.chordFraction());
        ThrowShade shade = new ThrowShade(g2, OUTLINE);
        double angle = reached(surface);
        if (angle != 0) {
            shade.ghost(place.createTransformedShape(outline.surface(0)));
        }
        shade.still(place.createTransformedShape(outline.front()));
        shade.moved(place.createTransformedShape(outline.surface(angle)), angle);
        ink.text(
                surface.name(),
                HouseStyle.SMALL,
                HouseStyle.INK,
                cell.getMinX() + 12,
                cell.getMinY() + 8,
                Ink.Side.RIGHT);
    }
}
