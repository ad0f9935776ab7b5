package throwline.report.data;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import throwline.Parsed;
import throwline.report.Sentences;
import throwline.section.Basis;
import throwline.section.boundary.LayerStretch;
import throwline.study.SectionFlow;
import throwline.study.SectionSweep;
import throwline.study.WingSweep;
import throwline.units.Display;
import throwline.words.Words;

/** The keys and their order are a contract with scripts. Numbers are invented. */
class SweepJsonTest {

    @Test
    void wing() {
        WingSweep.Strip strip = new WingSweep.Strip(
                -0.5, 0.25, 0.2, 0.9, 1.2, Math.toRadians(5), Math.toRadians(-6), Math.toRadians(7), 0.0004);
        WingSweep.Point point = new WingSweep.Point(
                Math.toRadians(4), 0.8, 0.05, 0.03, 0.02, 0.001, -0.002, -0.1, false, 12, List.of(strip, strip));
        WingSweep.Stall stall = new WingSweep.Stall(
                new WingSweep.Mark(Math.toRadians(13), 1.21),
                -0.4,
                new WingSweep.Mark(Math.toRadians(14), 1.25),
                new WingSweep.Mark(Math.toRadians(16), 1.28));
        WingSweep sweep = new WingSweep("clean", 0.4, 1.8, 0.23, 12, List.of(point), Optional.of(stall), List.of());
        Parsed json = Parsed.of(new WingJson(new Sentences(Words.load(), Display.metric())).write(sweep));
        assertThat(json.keys()).containsExactly("format", "area", "span", "meanChord", "points", "stall");
        assertThat(json.at("format").text()).isEqualTo("wing/1");
        Parsed written = json.at("points").at(0);
        assertThat(written.keys())
                .containsExactly(
                        "incidence",
                        "lift",
                        "drag",
                        "inducedDrag",
                        "profileDrag",
                        "rolling",
                        "yawing",
                        "pitching",
                        "converged",
                        "iterations",
                        "strips");
        assertThat(written.at("incidence").number()).isEqualTo(4);
        assertThat(written.at("converged").value()).isEqualTo(false);
        assertThat(written.at("strips").at(1).keys())
                .containsExactly(
                        "at", "width", "chord", "lift", "limit", "localIncidence", "deflection", "margin", "hinge");
        assertThat(written.at("strips").at(1).at("deflection").number()).isEqualTo(-6);
        assertThat(written.at("strips").at(1).at("margin").number()).isEqualTo(7);
        assertThat(json.at("stall").keys()).containsExactly("onset", "onsetAt", "checkedMaximum", "plateau");
        assertThat(json.at("stall").at("plateau").at("incidence").number()).isEqualTo(16);
    }

    @Test
    void section() {
        SectionSweep sweep = new SectionSweep(
                "clark-y",
                150_000,
                Math.toRadians(-6),
                0.25,
                1.3,
                -0.8,
                Math.toRadians(11.5),
                List.of(new SectionSweep.Point(Math.toRadians(-90), -0.1, 1.9, 0.2, 0.3, Basis.PLATE)));
        SectionFlow.Side side = new SectionFlow.Side(
                List.of(new LayerStretch(LayerStretch.Kind.LAMINAR, 0, 0.4)),
                List.of(new SectionFlow.Station(0, 0.01, -1.5)));
        SectionFlow flow = new SectionFlow(Math.toRadians(4), 0.7, side, side);
        Parsed json =
                Parsed.of(new SectionJson(new Sentences(Words.load(), Display.metric())).write(sweep, List.of(flow)));
        assertThat(json.keys())
                .containsExactly(
                        "format",
                        "airfoil",
                        "re",
                        "flap",
                        "flapChord",
                        "maxLift",
                        "minLift",
                        "stallAngle",
                        "points",
                        "computedFlows");
        Parsed written = json.at("computedFlows").at(0);
        assertThat(written.keys()).containsExactly("angle", "lift", "top", "bottom");
        assertThat(written.at("angle").number()).isEqualTo(4);
        assertThat(written.at("top").at("layers").at(0).at("layer").text()).isEqualTo("laminar");
        assertThat(written.at("top").at("pressures").at(0).at("pressure").number())
                .isEqualTo(-1.5);
        assertThat(json.at("format").text()).isEqualTo("section/1");
        assertThat(json.at("re").number()).isEqualTo(150_000);
        assertThat(json.at("flap").number()).isEqualTo(-6);
        Parsed point = json.at("points").at(0);
        assertThat(point.keys()).containsExactly("angle", "lift", "drag", "moment", "hinge", "basis");
        assertThat(point.at("angle").number()).isEqualTo(-90);
        assertThat(point.at("basis").text()).isEqualTo("plate");
    }
}
