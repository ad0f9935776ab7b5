package throwline.report.data;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import throwline.Parsed;
import throwline.report.CompareAnswer;
import throwline.report.Fixture;
import throwline.report.Sentences;
import throwline.study.Headline;
import throwline.study.SetUpResult;
import throwline.units.Display;
import throwline.words.Words;

/** The keys and their order are a contract with scripts. */
class CompareJsonTest {

    private final CompareJson writer = new CompareJson(new Sentences(Words.load(), Display.metric()));

    @Test
    void keys_stand_in_the_order_of_the_contract() {
        Parsed json = Parsed.of(writer.write(List.of(Fixture.orchard())));
        assertThat(json.keys()).containsExactly("format", "model", "packs", "assumed", "warnings");
        assertThat(json.at("format").text()).isEqualTo("compare/1");
        assertThat(json.at("model").text()).isEqualTo("Orchard");
        Parsed pack = json.at("packs").at(0);
        assertThat(pack.keys()).containsExactly("name", "weight", "balance", "setups", "mixes", "swings");
        Parsed setUp = pack.at("setups").at(3);
        assertThat(setUp.keys())
                .containsExactly(
                        "name",
                        "stallSpeed",
                        "approachSpeed",
                        "descentAngle",
                        "sinkRate",
                        "approachGlideRatio",
                        "bestGlideRatio",
                        "noseDownSpeed",
                        "elevator",
                        "elevatorChange",
                        "rollRate",
                        "flareHeight",
                        "float",
                        "flapSpeedLimit",
                        "gustLimit",
                        "landingDistance",
                        "landingDistanceInWind",
                        "takeOffRun",
                        "takeOffDistance",
                        "climbRate",
                        "climbAngle",
                        "climbSpeed",
                        "heightAfterTenSeconds",
                        "goAround",
                        "goAroundHeightLost",
                        "elevatorChangeWithThrottle",
                        "aileronWithThrottle",
                        "rudderWithThrottle",
                        "levelThrottle",
                        "topSpeed",
                        "loopTopSpeed",
                        "cruiseSpeed",
                        "cruiseCurrent",
                        "cruiseTime",
                        "cruiseElevator",
                        "slowestHalfThrottle",
                        "slowestFullThrottle",
                        "firstStall",
                        "elevatorStraight",
                        "servos",
                        "positions",
                        "mix",
                        "oneSided",
                        "notes");
        assertThat(setUp.at("stallSpeed").keys()).containsExactly("value", "low", "high", "basis");
        assertThat(setUp.at("noseDownSpeed").keys()).containsExactly("value", "why");
        assertThat(setUp.at("rollRate").keys()).containsExactly("low rates", "high rates");
        assertThat(setUp.at("firstStall").keys()).containsExactly("side", "spanFraction", "surface");
        assertThat(json.at("assumed").at(0).keys()).containsExactly("path", "value");
    }

    @Test
    void angles_are_in_degrees_and_the_rest_in_si_units() {
        CompareAnswer answer = Fixture.orchard();
        SetUpResult fixed = answer.comparison().packs().get(1).setUps().get(2);
        Parsed pack = Parsed.of(writer.write(List.of(answer))).at("packs").at(1);
        Parsed setUp = pack.at("setups").at(2);
        assertThat(pack.at("weight").number()).isEqualTo(3.42);
        assertThat(pack.at("balance").number()).isEqualTo(0.08);
        Headline.Known speed = (Headline.Known) fixed.approachSpeed();
        Headline.Known angle = (Headline.Known) fixed.descentAngle();
        assertThat(setUp.at("approachSpeed").at("value").number()).isCloseTo(speed.value(), sixFigures(speed.value()));
        assertThat(setUp.at("descentAngle").at("low").number())
                .isCloseTo(Math.toDegrees(angle.low()), sixFigures(Math.toDegrees(angle.low())));
        assertThat(setUp.at("descentAngle").at("basis").text()).isEqualTo("assumed");
    }

    @Test
    void several_models_are_an_array() {
        Parsed json = Parsed.of(writer.write(List.of(Fixture.orchard(), Fixture.crowded())));
        assertThat(json.size()).isEqualTo(2);
        assertThat(json.at(1).at("model").text()).isEqualTo("Crowded House of Set-ups");
    }

    private static Offset<Double> sixFigures(double value) {
        return Offset.offset(0.6e-5 * Math.abs(value));
    }
}
