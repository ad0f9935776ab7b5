package throwline.window.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import throwline.input.FlightInterview;
import throwline.input.ReadFlights;
import throwline.model.Model;
import throwline.words.Words;

/** A flight that is noted in the window stands in the file that the commands read. */
class FlightNotebookTest {

    @TempDir
    private Path folder = Path.of("");

    private Path file = Path.of("");
    private Model model = new SessionFixture(Path.of(".")).example().model();

    @BeforeEach
    void open() {
        file = folder.resolve("model.yaml");
        model = new SessionFixture(folder).open().model();
    }

    private FlightInterview told(String... answers) {
        FlightInterview interview = new FlightInterview(model, "2026-05-03");
        for (String answer : answers) {
            assertThat(interview.answer(answer)).as(answer).isEmpty();
        }
        while (interview.next().isPresent()) {
            assertThat(interview.answer("")).isEmpty();
        }
        return interview;
    }

    /** Date, pack, weight, temperature, wind, set-up, stall with its way. */
    private FlightInterview stalled(String speed) {
        return told("", "small", "", "", "", "clean", speed, "airspeed sensor");
    }

    @Test
    void a_flight_is_written_behind_the_others() throws IOException {
        FlightNotebook book = new FlightNotebook(file, new Disk());
        assertThat(book.isThere()).isFalse();
        assertThat(book.append(stalled("31 km/h"))).isEmpty();
        String first = Files.readString(book.place());
        assertThat(book.append(stalled("32 km/h"))).isEmpty();
        assertThat(Files.readString(book.place()))
                .startsWith(first.stripTrailing())
                .contains("32 km/h");
        assertThat(book.problems(model)).isEmpty();
        ReadFlights.Notes notes = (ReadFlights.Notes) book.read(model);
        assertThat(notes.notes().counted()).hasSize(2);
    }

    @Test
    void a_file_that_cannot_be_read_is_told_of_and_left_alone() throws IOException {
        FlightNotebook book = new FlightNotebook(file, new Disk());
        Files.writeString(book.place(), "flights: [oh: dear\n");
        assertThat(book.problems(model)).isNotEmpty();
        assertThat(book.append(stalled("31 km/h"))).isPresent();
        assertThat(Files.readString(book.place())).isEqualTo("flights: [oh: dear\n");
    }

    @Test
    void flights_in_the_model_file_are_found_there_and_never_in_two_places() throws IOException {
        FlightNotebook book = new FlightNotebook(file, new Disk());
        String inside =
                book.appended(stalled("31 km/h"), "").orElseThrow().replaceFirst("(?s).*?flights:\n", "flights:\n");
        Files.writeString(file, Files.readString(file) + "\n" + inside);
        assertThat(book.isInside()).isTrue();
        assertThat(book.place()).isEqualTo(file);
        assertThat(((ReadFlights.Notes) book.read(model)).notes().counted()).hasSize(1);
        assertThat(book.appended(stalled("33 km/h"), Files.readString(file)))
                .hasValueSatisfying(text ->
                        assertThat(text).contains("31 km/h").contains("33 km/h").contains("# Orchard"));
        Files.writeString(
                folder.resolve("model-flights.yaml"), "throwline flights: 1\nmodel: model.yaml\nflights: []\n");
        assertThat(book.problems(model)).hasSize(1);
    }

    @Test
    void a_full_disk_leaves_the_file_as_it_was() throws IOException {
        FlightNotebook good = new FlightNotebook(file, new Disk());
        good.append(stalled("31 km/h"));
        String before = Files.readString(good.place());
        FlightNotebook book = new FlightNotebook(file, new Disk() {
            @Override
            protected void put(Path place, byte[] bytes) throws IOException {
                throw new IOException("full");
            }
        });
        assertThat(book.append(stalled("33 km/h")))
                .hasValueSatisfying(why -> assertThat(why.code()).isEqualTo("window.disk.full"));
        assertThat(Files.readString(good.place())).isEqualTo(before);
        assertThat(Words.load().has("window.flights.layout")).isTrue();
        try (var files = Files.list(folder)) {
            assertThat(files.map(each -> String.valueOf(each.getFileName())).toList())
                    .containsExactlyInAnyOrderElementsOf(List.of("model.yaml", "model-flights.yaml"));
        }
    }
}
