package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import throwline.input.FlightsFile;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadFlights;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.notes.FlightNotes;
import throwline.section.MeasuredSections;

/** Time of an estimate from notes once the model is known, in processor seconds, which other work on a machine blurs less. */
class LearnSpeedTest {

    private static final double MOST = 0.5;
    private static final int WARM = 6;
    private static final int RUNS = 4;

    /** Two days, eight notes of all kinds and one of them wrong. */
    private static final String NOTES = """
            throwline flights: 1
            flights:
              - date: 2026-10-04
                pack: small
                wind: {speed: 2 m/s, told by: feel}
                noticed:
                  - {what: stall, set-up: landing flap, ground speed: 31 km/h, going: into the wind}
                  - {what: stall, set-up: clean, ground speed: 34 m/s, going: both ways}
                  - {what: glide, set-up: clean, height: 30 m, distance: 210 m, time: 20 s, going: into the wind}
                  - {what: trim, set-up: landing flap, elevator: 1 mm down, told by: bench}
              - date: 2026-10-11
                pack: large
                wind: {speed: 1 m/s, told by: flag}
                noticed:
                  - {what: roll, set-up: clean, stick: low rates, rolls: 1, time: 4 s}
                  - {what: path, set-up: airbrake, height: 10 m, distance: 25 m, going: into the wind}
                  - {what: glide, set-up: airbrake, height: 30 m, time: 9 s}
                  - {what: weight, weight: 3.4 kg}
            """;

    @Test
    void learns_from_eight_notes_within_half_a_second() {
        PackedAirfoils airfoils = new PackedAirfoils();
        Model model = ((ReadModel.Project) ModelFile.read(Path.of("examples/orchard.yaml"), airfoils)).model();
        MeasuredSections sections = new MeasuredSections();
        Comparison plain = new ComparisonStudy(sections, Bands.load()).compare(model, airfoils, model.packs());
        FlightNotes notes = ((ReadFlights.Notes) FlightsFile.read(NOTES, "notes.yaml", model)).notes();
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        double least = Double.MAX_VALUE;
        for (int run = 0; run < WARM + RUNS; run++) {
            long start = threads.getCurrentThreadCpuTime();
            Learnt learnt = new LearnStudy(sections, Bands.load())
                    .learn(plain, airfoils, notes)
                    .orElseThrow()
                    .learnt();
            double seconds = (threads.getCurrentThreadCpuTime() - start) * 1e-9;
            assertThat(learnt.measurements()).isEqualTo(8);
            least = run < WARM ? least : Math.min(least, seconds);
        }
        assertThat(least).isLessThan(MOST);
    }
}
