package throwline.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import throwline.model.AirfoilName;
import throwline.section.Airfoil;
import throwline.section.AirfoilLibrary;
import throwline.section.Basis;
import throwline.section.SectionAerodynamics;
import throwline.section.SectionCurve;
import throwline.section.SectionPlace;
import throwline.section.SurfaceState;
import throwline.section.computed.ComputedAirfoil;
import throwline.section.computed.LearnedAirfoil;
import throwline.section.computed.LearnedAirfoils;

/**
 * Every airfoil of the library with a known outline as if only that were known, against its own polars: rules fitted to
 * the others alone and the runs of another. Head: {@code but not}, names of airfoils whose runs are part of another's.
 */
final class ComputedSections implements CaseKind {

    /** Its runs are part of another's. */
    private static final String TWICE = "clark-y-b";

    private final SectionAerodynamics sections;
    private final AirfoilLibrary library;

    ComputedSections(SectionAerodynamics sections, AirfoilLibrary library) {
        this.sections = sections;
        this.library = library;
    }

    @Override
    public CaseResult run(CaseFile file) throws UnreadableCase {
        List<String> without = List.of(file.optional("but not").split(" "));
        List<Airfoil> all = airfoils(without);
        LearnedAirfoils learned = learned(all, sections);
        List<Pair> pairs = all.parallelStream()
                .flatMap(airfoil -> of(airfoil, all, learned).stream())
                .toList();
        return CaseResult.of(file, new PairStudy(pairs).checks(file.rows()), pairs);
    }

    private List<Airfoil> airfoils(List<String> without) {
        return library.names().stream()
                .filter(name -> !without.contains(name))
                .flatMap(name -> library.find(new AirfoilName(name)).stream())
                .filter(StandIns::measuredAtModelSize)
                .toList();
    }

    /** Airfoils of the library that teach of others: each once. */
    static List<Airfoil> teachers(AirfoilLibrary library) {
        return library.names().stream()
                .filter(name -> !TWICE.equals(name))
                .flatMap(name -> library.find(new AirfoilName(name)).stream())
                .filter(StandIns::measuredAtModelSize)
                .toList();
    }

    /** What those measured at model size teach. */
    static LearnedAirfoils learned(List<Airfoil> all, SectionAerodynamics sections) {
        return new LearnedAirfoils(all.parallelStream()
                .filter(StandIns::measuredAtModelSize)
                .flatMap(airfoil -> LearnedAirfoil.of(airfoil, sections).stream())
                .toList());
    }

    private List<Pair> of(Airfoil airfoil, List<Airfoil> all, LearnedAirfoils learned) {
        List<Airfoil> others =
                all.stream().filter(other -> !other.equals(airfoil)).toList();
        List<Pair> pairs = new ArrayList<>();
        ComputedAirfoil computed = new ComputedAirfoil(learned.without(airfoil.name()));
        airfoil.shape()
                .flatMap(shape -> computed.of(shape, others, "computed"))
                .ifPresent(found -> compare(airfoil, found, pairs));
        return pairs;
    }

    private void compare(Airfoil airfoil, Airfoil computed, List<Pair> pairs) {
        for (double reynolds : StandIns.REYNOLDS) {
            SectionCurve own = sections.curve(SectionPlace.of(airfoil), SurfaceState.none(), reynolds);
            SectionCurve found = sections.curve(SectionPlace.of(computed), SurfaceState.none(), reynolds);
            if (found.basis(own.zeroLiftAngle()) != Basis.LIKENESS) {
                String where = String.format(Locale.ROOT, "%s, Re %.0f", airfoil.name(), reynolds);
                StandIns.compare(pairs, Basis.COMPUTED, airfoil.name(), where, own, found);
            }
        }
    }
}
