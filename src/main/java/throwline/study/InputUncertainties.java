package throwline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Surface;
import throwline.model.WingSection;
import throwline.section.AirfoilLibrary;
import throwline.section.Basis;
import throwline.section.SectionBands;
import throwline.study.FlyResult.Sensitivity;

/**
 * Uncertainties of what the owner of a model knows: weight to 1 %, balance point to 2 mm, throws to 1 mm at the
 * trailing edge (common practice, no source), the tail's incidence where the file does not give it, and an airfoil that
 * was not measured itself (how far stand-ins are off: the validation book).
 */
final class InputUncertainties {

    private static final double WEIGHT = 0.01;

    /** Model size, for the accuracy of stand-ins. */
    private static final double REYNOLDS = 200_000;

    private final Model model;
    private final AirfoilLibrary airfoils;
    private final SectionBands bands = SectionBands.load();

    InputUncertainties(Model model, AirfoilLibrary airfoils) {
        this.model = model;
        this.airfoils = airfoils;
    }

    /** All that matters in a set-up. */
    List<InputUncertainty> in(SetUp setUp) {
        List<InputUncertainty> all = new ArrayList<>();
        all.add(new InputUncertainty(InputUncertainty.Kind.WEIGHT, "", WEIGHT));
        all.add(new InputUncertainty(InputUncertainty.Kind.BALANCE, "", Sensitivity.BALANCE));
        all.addAll(ofTail());
        for (Surface surface : model.wing().surfaces()) {
            if (setUp.deflection(surface.name()) != 0 || rolls(surface, setUp)) {
                double chord = model.wing().throwChord(surface);
                all.add(new InputUncertainty(InputUncertainty.Kind.THROW, surface.name(), Sensitivity.EDGE / chord));
            }
        }
        standIns().forEach((name, basis) -> {
            SectionBands.Band band = bands.of(basis, REYNOLDS);
            all.add(new InputUncertainty(InputUncertainty.Kind.AIRFOIL_LIFT, name, band.maxLift()));
            all.add(new InputUncertainty(InputUncertainty.Kind.AIRFOIL_ANGLE, name, band.zeroLiftAngle()));
            all.add(new InputUncertainty(InputUncertainty.Kind.AIRFOIL_DRAG, name, band.drag()));
        });
        return all;
    }

    /**
     * Those that are not small against the model's own errors: with an airfoil that was never measured all, else the tail's
     * incidence where the file does not give it.
     */
    List<InputUncertainty> large(SetUp setUp) {
        return standIns().isEmpty() ? ofTail() : in(setUp);
    }

    private List<InputUncertainty> ofTail() {
        double doubt = model.tail().incidenceDoubt();
        return doubt > 0 ? List.of(new InputUncertainty(InputUncertainty.Kind.TAIL_INCIDENCE, "", doubt)) : List.of();
    }

    /** The wing's airfoils that others stand in for, and what that rests on. */
    Map<String, Basis> standIns() {
        Map<String, Basis> names = new TreeMap<>();
        for (WingSection section : model.wing().sections()) {
            airfoils.find(section.airfoil())
                    .ifPresent(airfoil ->
                            airfoil.likeness().ifPresent(like -> names.put(airfoil.name(), like.basis(REYNOLDS))));
        }
        return names;
    }

    private boolean rolls(Surface surface, SetUp setUp) {
        return model.sticks().stream()
                .anyMatch(stick -> stick instanceof Stick.Roll roll
                        && roll.worksIn(setUp)
                        && roll.throwsBySurface().containsKey(surface.name()));
    }
}
