package throwline.window.session;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The folder in which programs of a person keep what they were doing, by the custom of the system. */
public final class StateFolder {

    private static final String OWN = "throwline";

    private StateFolder() {}

    /** That of this process. */
    public static Path ofProcess() {
        return of(System.getProperty("os.name", ""), Path.of(System.getProperty("user.home", ".")), System.getenv());
    }

    static Path of(String system, Path home, Map<String, String> environment) {
        String name = system.toLowerCase(Locale.ROOT);
        Optional<String> given =
                Optional.ofNullable(environment.get("XDG_STATE_HOME")).filter(s -> !s.isBlank());
        if (given.isPresent()) {
            return Path.of(given.get(), OWN);
        }
        if (name.startsWith("windows")) {
            String local = environment.get("LOCALAPPDATA");
            return (local == null || local.isBlank() ? home : Path.of(local)).resolve(OWN);
        }
        return name.startsWith("mac")
                ? home.resolve("Library/Application Support").resolve(OWN)
                : home.resolve(".local/state").resolve(OWN);
    }
}
