package throwline.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import throwline.model.AirfoilName;
import throwline.section.Airfoil;
import throwline.section.AirfoilLibrary;
import throwline.section.Basis;
import throwline.section.CurveReading;
import throwline.section.PolarRun;
import throwline.section.SectionAerodynamics;
import throwline.section.SectionCurve;
import throwline.section.SectionPlace;
import throwline.section.SurfaceState;
import throwline.section.SurrogateAirfoil;
import throwline.section.computed.ComputedAirfoil;
import throwline.section.computed.LearnedAirfoils;

/**
 * Every airfoil of the library as if only its thickness, camber and moment were known, against its own polars. Head: {@code
 * but not}, names of airfoils whose runs are part of another's.
 */
final class StandIns implements CaseKind {

    static final double[] REYNOLDS = {100_000, 200_000, 300_000};
    private static final double[] LIFTS = {0.2, 0.5, 0.8};
    private static final double TOP = 0.9;
    /** More camber with less moment than these is called reflexed. */
    private static final double CAMBERED = 0.01;

    private static final double REFLEX = -0.015;
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
        LearnedAirfoils learned = ComputedSections.learned(all, sections);
        List<Pair> pairs = all.parallelStream()
                .filter(StandIns::measuredAtModelSize)
                .flatMap(airfoil -> of(airfoil, all, learned).stream())
                .toList();
        return CaseResult.of(file, new PairStudy(pairs).checks(file.rows()), pairs);
    }

    static boolean measuredAtModelSize(Airfoil airfoil) {
        return airfoil.runs().stream().anyMatch(run -> run.kind() == PolarRun.Kind.DRAG && run.reynolds() < MODEL_SIZE);
    }

    private List<Pair> of(Airfoil airfoil, List<Airfoil> all, LearnedAirfoils learned) {
        List<Airfoil> others =
                all.stream().filter(other -> !other.equals(airfoil)).toList();
        List<Pair> pairs = new ArrayList<>();
        SurrogateAirfoil ordinary = SurrogateAirfoil.ordinary(airfoil.thickness(), airfoil.camber());
        boolean reflexed = airfoil.camber() > CAMBERED && airfoil.nominalMoment() > REFLEX;
        new ComputedAirfoil(learned.without(airfoil.name()))
                .standIn(reflexed ? ordinary.withMoment(airfoil.nominalMoment()) : ordinary, others, "stand-in")
                .ifPresent(standIn -> compare(airfoil, standIn, pairs));
        return pairs;
    }

    private void compare(Airfoil airfoil, Airfoil standIn, List<Pair> pairs) {
        for (double reynolds : REYNOLDS) {
            SectionCurve own = sections.curve(SectionPlace.of(airfoil), SurfaceState.none(), reynolds);
            SectionCurve lent = sections.curve(SectionPlace.of(standIn), SurfaceState.none(), reynolds);
            String where = String.format(Locale.ROOT, "%s, Re %.0f", airfoil.name(), reynolds);
            compare(pairs, Basis.LIKENESS, airfoil.name(), where, own, lent);
        }
    }

    /** Adds what two curves of one airfoil say: its own, and what another basis makes of it. */
    static void compare(
            List<Pair> pairs, Basis basis, String group, String where, SectionCurve own, SectionCurve other) {
        Adder adder = new Adder(pairs, basis, group);
        adder.add(Figure.SECTION_MAX_LIFT, where, own.maxLift(), other.maxLift());
        adder.add(
                Figure.SECTION_STALL_ANGLE,
                where,
                Math.toDegrees(own.stallAngle()),
                Math.toDegrees(other.stallAngle()));
        adder.add(
                Figure.SECTION_ZERO_LIFT,
                where,
                Math.toDegrees(own.zeroLiftAngle()),
                Math.toDegrees(other.zeroLiftAngle()));
        for (double lift : LIFTS) {
            if (lift < TOP * Math.min(own.maxLift(), other.maxLift())) {
                adder.add(
                        Figure.SECTION_DRAG,
                        where + ", lift " + lift,
                        CurveReading.dragAt(own, lift),
                        CurveReading.dragAt(other, lift));
            }
        }
    }

    private record Adder(List<Pair> pairs, Basis basis, String group) {

        void add(Figure figure, String condition, double measured, double predicted) {
            pairs.add(new Pair(figure, basis.name(), group, condition, measured, predicted));
        }
    }
}
