package throwline.section.computed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import throwline.section.Airfoil;
import throwline.section.AirfoilShape;
import throwline.section.MeasuredSections;
import throwline.section.SectionCurve;
import throwline.section.SectionPlace;
import throwline.section.SurfaceState;
import throwline.section.SurrogateAirfoil;

/**
 * Figure of a measured airfoil, and what three ways say of it without its own measurements.
 *
 * @param figure which
 * @param reynolds Reynolds number
 * @param measured what was measured
 * @param standIn that of the airfoil most alike, turned by the difference of zero-lift angles
 * @param method by the rule alone
 * @param difference by the rule and what it misses on the airfoils most alike: what the product uses
 */
public record ThreeWays(
        SectionFigure figure, double reynolds, double measured, double standIn, double method, double difference) {

    /**
     * All figures of all airfoils, each left out in turn.
     *
     * @param airfoils measured ones
     * @param learned what they teach
     */
    public static List<ThreeWays> of(List<Airfoil> airfoils, LearnedAirfoils learned) {
        MeasuredSections sections = new MeasuredSections();
        List<ThreeWays> all = new ArrayList<>();
        for (Airfoil airfoil : airfoils) {
            Optional<LearnedAirfoil> own = learned.find(airfoil.name());
            List<Airfoil> others =
                    airfoils.stream().filter(other -> !other.equals(airfoil)).toList();
            Optional<Airfoil> standIn = airfoil.shape()
                    .map((AirfoilShape shape) -> SurrogateAirfoil.of(shape))
                    .flatMap(said -> said.among(others, "stand-in", ""));
            if (own.isPresent() && standIn.isPresent()) {
                add(all, own.get(), standIn.get(), learned.without(airfoil.name()), sections);
            }
        }
        return all;
    }

    private static void add(
            List<ThreeWays> all,
            LearnedAirfoil own,
            Airfoil standIn,
            LearnedAirfoils others,
            MeasuredSections sections) {
        for (int i = 0; i < LearnedAirfoil.REYNOLDS.length; i++) {
            double reynolds = LearnedAirfoil.REYNOLDS[i];
            SectionCurve lent = sections.curve(SectionPlace.of(standIn), SurfaceState.none(), reynolds);
            for (SectionFigure figure : SectionFigure.values()) {
                ThreeWays ways = new ThreeWays(
                        figure,
                        reynolds,
                        own.measured(figure, i),
                        LearnedAirfoil.read(figure, lent),
                        others.alone(figure, own.traits(), reynolds),
                        others.predicted(figure, own.traits(), reynolds));
                if (Double.isFinite(ways.measured) && Double.isFinite(ways.standIn)) {
                    all.add(ways);
                }
            }
        }
    }
}
