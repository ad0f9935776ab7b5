package throwline.report.data;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import throwline.Golden;
import throwline.Parsed;
import throwline.report.FlyFixture;
import throwline.report.Sentences;
import throwline.study.FlyResult;
import throwline.units.Display;
import throwline.words.Words;

/** Keys, order and units of one set-up in depth are a contract with scripts: from fixed results. */
class FlyJsonTest {

    private final FlyJson writer = new FlyJson(new Sentences(Words.load(), Display.metric()));

    @Test
    void all_found() {
        Golden.check("fly-all.json", writer.write(FlyFixture.airbrake()));
    }

    @Test
    void the_reference_without_an_answer() {
        Golden.check("fly-reference.json", writer.write(FlyFixture.reference()));
    }

    @Test
    void throws_are_in_degrees_and_lost_runs_have_no_numbers() {
        FlyResult result = FlyFixture.airbrake();
        Parsed moves = Parsed.of(writer.write(result)).at("moves");
        Parsed lost = moves.at("lowering").at(0);
        Parsed half = moves.at("lowering").at(1);
        assertThat(half.at("elevator").number()).isEqualTo(4.5);
        assertThat(half.at("rise").number()).isEqualTo(4.6);
        assertThat(lost.at("end").text()).isEqualTo("lost-up");
        assertThat(writer.write(result)).contains("\"rise\": null", "\"suggestedTime\": null");
        assertThat(moves.at("suggestedTimes").at(1).at("time").number()).isEqualTo(0.5);
    }
}
