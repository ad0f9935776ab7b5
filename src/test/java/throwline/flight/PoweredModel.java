package throwline.flight;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import throwline.air.Gravity;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Battery;
import throwline.model.Model;
import throwline.model.Motor;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.power.Drive;
import throwline.power.DriveFitting;
import throwline.section.MeasuredSections;

/** The invented example orchard with a motor of kv 500 and four cells of 4 Ah. */
final class PoweredModel {

    private static final PackedAirfoils AIRFOILS = new PackedAirfoils();

    final Pack pack;
    final Model model;
    final Airframe airframe;
    final Drive drive;

    PoweredModel() {
        if (!(ModelFile.read(Path.of("examples", "orchard.yaml"), AIRFOILS) instanceof ReadModel.Project project)) {
            throw new AssertionError();
        }
        Model m = project.model();
        Pack first = m.packs().get(0);
        pack = new Pack("small", first.mass(), first.balance(), Optional.of(new Battery(4, 4 * 3600)));
        model = new Model(
                m.name(),
                List.of(pack),
                m.wing(),
                m.tail(),
                m.body(),
                m.wheels(),
                m.propeller(),
                m.field(),
                m.setUps(),
                m.sticks(),
                m.servos(),
                Optional.of(new Motor(
                        OptionalDouble.of(500), OptionalDouble.empty(), Motor.USUAL_CRUISE, Motor.Bench.none())));
        airframe = new Airframe(model, AIRFOILS, new MeasuredSections());
        drive = DriveFitting.of(model, pack, airframe.air().density())
                .orElseThrow()
                .drive();
    }

    List<SetUp> setUps() {
        return model.setUps();
    }

    double weight() {
        return pack.mass() * Gravity.STANDARD;
    }
}
