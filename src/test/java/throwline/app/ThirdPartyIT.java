package throwline.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;

/** Whoever gets the jar gets the licences of what is in it. */
class ThirdPartyIT {

    private static final Pattern LIBRARY = Pattern.compile("(?<name>[a-z0-9-]+?)-(?<version>\\d[0-9A-Za-z.]*)\\.jar");

    @Test
    void every_library_inside_the_jar_is_named_with_its_version() throws IOException {
        try (ZipFile jar = new ZipFile(JarRun.JAR.toFile())) {
            String named = text(jar, "META-INF/THIRD-PARTY.txt");
            List<String> inside = new ArrayList<>();
            for (String place : System.getProperty("java.class.path").split(File.pathSeparator, -1)) {
                Matcher library = LIBRARY.matcher(new File(place).getName());
                if (library.matches() && isInside(jar, new File(place))) {
                    inside.add(library.group("name"));
                    assertThat(named)
                            .as(place)
                            .containsPattern("\\b" + Pattern.quote(library.group("name")) + "\\b")
                            .contains(library.group("version"));
                }
            }
            assertThat(inside)
                    .contains("jfreechart", "picocli", "commons-math3")
                    .doesNotContain("assertj-core");
        }
    }

    @Test
    void licence_texts_and_notices_are_inside() throws IOException {
        try (ZipFile jar = new ZipFile(JarRun.JAR.toFile())) {
            assertThat(text(jar, "META-INF/LICENSE")).contains("Apache License");
            assertThat(text(jar, "META-INF/third-party/LGPL-2.1.txt")).contains("GNU LESSER GENERAL PUBLIC LICENSE");
            assertThat(text(jar, "META-INF/third-party/commons-math3-NOTICE.txt"))
                    .contains("Apache Commons Math");
        }
    }

    private static boolean isInside(ZipFile jar, File library) throws IOException {
        try (ZipFile zip = new ZipFile(library)) {
            return zip.stream()
                    .map(ZipEntry::getName)
                    .filter(name -> !name.endsWith("/") && !name.startsWith("META-INF/") && !name.contains("-info."))
                    .anyMatch(name -> jar.getEntry(name) != null);
        }
    }

    private static String text(ZipFile jar, String name) throws IOException {
        ZipEntry entry = jar.getEntry(name);
        assertThat(entry).as(name).isNotNull();
        try (InputStream in = jar.getInputStream(entry)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
