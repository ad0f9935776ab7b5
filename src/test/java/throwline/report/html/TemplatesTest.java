package throwline.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import gg.jte.Content;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TemplatesTest {

    @Test
    void what_a_person_wrote_into_a_file_is_never_read_as_html() {
        String name = "</title><script>alert('\"&');</script>";
        Content content = output -> output.writeUserContent(name);

        String page = new Templates().fill("frame.jte", Map.of("title", name, "content", content));

        assertThat(page).doesNotContain("<script").contains("&lt;/title&gt;&lt;script&gt;");
    }
}
