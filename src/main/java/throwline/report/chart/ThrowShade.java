package throwline.report.chart;

import java.awt.Color;
import java.awt.Stroke;
import java.util.List;

/** Shades of shapes by how far they are moved: darker is further, hatched is up, so that print without colour tells them apart. */
final class ThrowShade {

    static final Color SKIN = new Color(0xF4F4F4);

    private static final Color DOWN = new Color(0x0072B2);
    private static final Color UP = new Color(0xE69F00);

    /** The throw, rad, that is drawn darkest, and how dark the smallest is. */
    private static final double DARKEST = Math.toRadians(60);

    private static final double LIGHTEST = 0.15;
    private static final Stroke OUTLINE = ChartStyle.stroke(1.2f);
    private static final Stroke DASHED = ChartStyle.stroke(0.8f, 3, 2);

    private ThrowShade() {}

    /** What does not move. */
    static List<Item> still(List<Place> shape) {
        return outlined(shape, SKIN, Item.Hatch.NONE);
    }

    /** Where something stood before it was moved. */
    static Item ghost(List<Place> shape) {
        return new Item.Line(shape, true, ChartStyle.QUIET_INK, DASHED);
    }

    /** A surface; rad, trailing edge down positive. */
    static List<Item> moved(List<Place> shape, double deflection) {
        double share = LIGHTEST + (1 - LIGHTEST) * Math.min(1, Math.abs(deflection) / DARKEST);
        Color fill = deflection == 0 ? ChartStyle.GROUND : towards(deflection > 0 ? DOWN : UP, share);
        return outlined(shape, fill, deflection < 0 ? Item.Hatch.SLANTED : Item.Hatch.NONE);
    }

    private static List<Item> outlined(List<Place> shape, Color fill, Item.Hatch hatch) {
        return List.of(
                new Item.Area(shape, fill, hatch, ChartStyle.INK), new Item.Line(shape, true, ChartStyle.INK, OUTLINE));
    }

    private static Color towards(Color color, double share) {
        return new Color(part(color.getRed(), share), part(color.getGreen(), share), part(color.getBlue(), share));
    }

    private static int part(int of, double share) {
        return (int) Math.round(255 + share * (of - 255));
    }
}
