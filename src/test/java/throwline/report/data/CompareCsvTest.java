package throwline.report.data;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import throwline.report.Fixture;
import throwline.report.Sentences;
import throwline.study.FlightQuantity;
import throwline.units.Display;
import throwline.words.Words;

class CompareCsvTest {

    private final List<String> lines = new CompareCsv(new Sentences(Words.load(), Display.metric()))
            .write(List.of(Fixture.orchard()))
            .lines()
            .toList();

    @Test
    void one_number_a_line_below_one_heading() {
        assertThat(lines.get(0)).isEqualTo("model,pack,setup,quantity,stick,unit,value,low,high,basis,why");
        assertThat(lines).hasSize(1 + 2 * 4 * (FlightQuantity.values().length - 1 + 2));
        assertThat(lines).allMatch(line -> line.split(",", -1).length == 11);
    }

    @Test
    void a_number_that_was_not_found_says_why() {
        assertThat(lines)
                .contains(
                        "Orchard,small,airbrake,noseDownSpeed,,m/s,,,,,No lowest steady speed was found that wing and elevator can hold.");
    }

    @Test
    void a_clean_set_up_changes_nothing() {
        assertThat(lines).contains("Orchard,large,clean,elevatorChange,,deg,0,0,0,assumed,");
    }
}
