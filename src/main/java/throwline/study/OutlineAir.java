package throwline.study;

import java.util.List;

/**
 * Airfoil that a model file gives by coordinates, and what is made of it.
 *
 * @param airfoil its name in the model file
 * @param thickness largest thickness over chord
 * @param camber largest camber over chord
 * @param reynolds Reynolds number on its largest chord where the wing flies at a lift coefficient of 0.7
 * @param zeroLiftAngle rad
 * @param maxLift lift coefficient
 * @param stallAngle rad
 * @param flows air along the outline; none where the section method is not meant for it
 */
public record OutlineAir(
        String airfoil,
        double thickness,
        double camber,
        double reynolds,
        double zeroLiftAngle,
        double maxLift,
        double stallAngle,
        List<SectionFlow> flows) {

    public OutlineAir {
        flows = List.copyOf(flows);
    }
}
