package throwline.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import throwline.model.AirfoilName;
import throwline.section.Airfoil;
import throwline.section.AirfoilLibrary;
import throwline.section.Basis;
import throwline.section.PolarRun;
import throwline.section.SectionAerodynamics;
import throwline.section.SectionCurve;
import throwline.section.SectionPlace;
import throwline.section.SurfaceState;
import throwline.section.SurrogateAirfoil;

/**
 * Every airfoil of the library as if only its thickness, camber and moment were known, against its own polars. Head: {@code
 * but not}, names of airfoils whose runs are part of another's.
 */
final class StandIns implements CaseKind {

    private static final double[] REYNOLDS = {100_000, 200_000, 300_000};
    private static final double[] LIFTS = {0.2, 0.5, 0.8};
    private static final double TOP = 0.9;
    private static final double MODEL_SIZE = 150_000;

    private final SectionAerodynamics sections;
    private final AirfoilLibrary library;

    StandIns(SectionAerodynamics sections, AirfoilLibrary library) {
        this.sections = sections;
        this.library = library;
    }

    @Override
    public CaseResult run(CaseFile file) throws UnreadableCase {
        List<String> without = List.of(file.optional("but not").split(" "));
        List<Airfoil> all = library.names().stream()
                .filter(name -> !without.contains(name))
                .flatMap(name -> library.find(new AirfoilName(name)).stream())
                .toList();
        List<Pair> pairs = all.parallelStream()
                .filter(StandIns::measuredAtModelSize)
                .flatMap(airfoil -> of(airfoil, all).stream())
                .toList();
        return CaseResult.of(file, new PairStudy(pairs).checks(file.rows()), pairs);
    }

    private static boolean measuredAtModelSize(Airfoil airfoil) {
        return airfoil.runs().stream().anyMatch(run -> run.kind() == PolarRun.Kind.DRAG && run.reynolds() < MODEL_SIZE);
    }

    private List<Pair> of(Airfoil airfoil, List<Airfoil> all) {
        List<Airfoil> others =
                all.stream().filter(other -> !other.equals(airfoil)).toList();
        List<Pair> pairs = new ArrayList<>();
        SurrogateAirfoil.ordinary(airfoil.thickness(), airfoil.camber())
                .withMoment(airfoil.nominalMoment())
                .among(others, "stand-in", "")
                .ifPresent(standIn -> compare(airfoil, standIn, pairs));
        return pairs;
    }

    private void compare(Airfoil airfoil, Airfoil standIn, List<Pair> pairs) {
        for (double reynolds : REYNOLDS) {
            SectionCurve own = sections.curve(SectionPlace.of(airfoil), SurfaceState.none(), reynolds);
            SectionCurve lent = sections.curve(SectionPlace.of(standIn), SurfaceState.none(), reynolds);
            String where = String.format(Locale.ROOT, "%s, Re %.0f", airfoil.name(), reynolds);
            add(pairs, Figure.SECTION_MAX_LIFT, airfoil, where, own.maxLift(), lent.maxLift());
            add(
                    pairs,
                    Figure.SECTION_STALL_ANGLE,
                    airfoil,
                    where,
                    Math.toDegrees(own.stallAngle()),
                    Math.toDegrees(lent.stallAngle()));
            add(
                    pairs,
                    Figure.SECTION_ZERO_LIFT,
                    airfoil,
                    where,
                    Math.toDegrees(own.zeroLiftAngle()),
                    Math.toDegrees(lent.zeroLiftAngle()));
            for (double lift : LIFTS) {
                if (lift < TOP * Math.min(own.maxLift(), lent.maxLift())) {
                    add(
                            pairs,
                            Figure.SECTION_DRAG,
                            airfoil,
                            where + ", lift " + lift,
                            CurveReading.dragAt(own, lift),
                            CurveReading.dragAt(lent, lift));
                }
            }
        }
    }

    private static void add(
            List<Pair> pairs, Figure figure, Airfoil airfoil, String condition, double measured, double predicted) {
        pairs.add(new Pair(figure, Basis.LIKENESS.name(), airfoil.name(), condition, measured, predicted));
    }
}
