package throwline;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;

/** Data flows one way; lower layers never import higher ones. */
@AnalyzeClasses(packages = "throwline", importOptions = ImportOption.DoNotIncludeTests.class)
class LayersTest {

    private static final String[] BELOW_STUDY = {
        "throwline.sizing..",
        "throwline.correction..",
        "throwline.logs..",
        "throwline.notes..",
        "throwline.flight..",
        "throwline.power..",
        "throwline.liftingline..",
        "throwline.linkage..",
        "throwline.section..",
        "throwline.model..",
        "throwline.air..",
        "throwline.units..",
        "throwline.numerics.."
    };

    @ArchTest
    static final ArchRule LAYERS = Architectures.layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("app")
            .definedBy("throwline.app..")
            .layer("cli")
            .definedBy("throwline.cli..")
            .layer("window")
            .definedBy("throwline.window..")
            .layer("report")
            .definedBy("throwline.report..")
            .layer("study")
            .definedBy("throwline.study..")
            .layer("validation")
            .definedBy("throwline.validation..")
            .layer("input")
            .definedBy("throwline.input..")
            .layer("sizing")
            .definedBy("throwline.sizing..")
            .layer("correction")
            .definedBy("throwline.correction..")
            .layer("logs")
            .definedBy("throwline.logs..")
            .layer("notes")
            .definedBy("throwline.notes..")
            .layer("flight")
            .definedBy("throwline.flight..")
            .layer("power")
            .definedBy("throwline.power..")
            .layer("liftingline")
            .definedBy("throwline.liftingline..")
            .layer("linkage")
            .definedBy("throwline.linkage..")
            .layer("section")
            .definedBy("throwline.section..")
            .layer("model")
            .definedBy("throwline.model..")
            .layer("air")
            .definedBy("throwline.air..")
            .layer("words")
            .definedBy("throwline.words..")
            .layer("units")
            .definedBy("throwline.units..")
            .layer("numerics")
            .definedBy("throwline.numerics..")
            .whereLayer("app")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("cli")
            .mayOnlyBeAccessedByLayers("app")
            .whereLayer("window")
            .mayOnlyBeAccessedByLayers("app")
            .whereLayer("report")
            .mayOnlyBeAccessedByLayers("cli", "window")
            .whereLayer("study")
            .mayOnlyBeAccessedByLayers("cli", "window", "report", "validation")
            .whereLayer("validation")
            .mayOnlyBeAccessedByLayers("cli", "window", "report")
            .whereLayer("input")
            .mayOnlyBeAccessedByLayers("cli", "window", "validation")
            .whereLayer("sizing")
            .mayOnlyBeAccessedByLayers("study", "report", "cli", "window")
            .whereLayer("correction")
            .mayOnlyBeAccessedByLayers("study", "report", "cli", "window")
            .whereLayer("logs")
            .mayOnlyBeAccessedByLayers("correction", "input", "study", "report", "cli", "window")
            .whereLayer("flight")
            .mayOnlyBeAccessedByLayers("correction", "sizing", "study", "validation", "report")
            .whereLayer("power")
            .mayOnlyBeAccessedByLayers("flight", "sizing", "study", "validation")
            .whereLayer("liftingline")
            .mayOnlyBeAccessedByLayers("flight", "sizing", "study", "validation")
            .whereLayer("linkage")
            .mayOnlyBeAccessedByLayers("flight", "study", "report")
            .whereLayer("section")
            .mayOnlyBeAccessedByLayers(
                    "liftingline", "flight", "sizing", "study", "validation", "report", "input", "cli", "window")
            .whereLayer("numerics")
            .mayNotAccessAnyLayer()
            .whereLayer("air")
            .mayOnlyBeAccessedByLayers(
                    "section",
                    "liftingline",
                    "power",
                    "flight",
                    "correction",
                    "logs",
                    "sizing",
                    "study",
                    "validation",
                    "input");

    @ArchTest
    static final ArchRule NO_CYCLES =
            slices().matching("throwline.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule DRAWING_ONLY_IN_REPORT = noClasses()
            .that()
            .resideOutsideOfPackage("throwline.report..")
            .should()
            .dependOnClassesThat(resideInAnyPackage("org.jfree..", "org.apache.batik..", "org.apache.pdfbox.."));

    @ArchTest
    static final ArchRule SCREENS_ONLY_IN_REPORT_AND_WINDOW = noClasses()
            .that()
            .resideOutsideOfPackages("throwline.report..", "throwline.window..", "throwline.app..")
            .should()
            .dependOnClassesThat(resideInAnyPackage("java.awt..", "javax.swing..", "com.formdev.."));

    @ArchTest
    static final ArchRule NO_SWING_IN_THE_SESSION = noClasses()
            .that()
            .resideInAPackage("throwline.window.session..")
            .should()
            .dependOnClassesThat(resideInAnyPackage("java.awt..", "javax.swing..", "com.formdev.."));

    @ArchTest
    static final ArchRule NO_SWING_IN_THE_SKETCHES = noClasses()
            .that()
            .resideInAPackage("throwline.window.sketch..")
            .should()
            .dependOnClassesThat(resideInAnyPackage("javax.swing..", "com.formdev.."));

    @ArchTest
    static final ArchRule YAML_ONLY_IN_INPUT = noClasses()
            .that()
            .resideOutsideOfPackage("throwline.input..")
            .should()
            .dependOnClassesThat(resideInAnyPackage("org.snakeyaml.."));

    @ArchTest
    static final ArchRule COMMANDS_ONLY_IN_CLI = noClasses()
            .that()
            .resideOutsideOfPackage("throwline.cli..")
            .should()
            .dependOnClassesThat(resideInAnyPackage("picocli.."));

    @ArchTest
    static final ArchRule PRINTING_ONLY_AT_THE_DOOR = noClasses()
            .that()
            .resideOutsideOfPackages("throwline.cli..", "throwline.app..")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .callMethod(System.class, "exit", int.class);

    @ArchTest
    static final ArchRule NO_CLOCK_BELOW_STUDY = noClasses()
            .that()
            .resideInAnyPackage(BELOW_STUDY)
            .should()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .dependOnClassesThat(isOneOf(Clock.class, Instant.class, LocalDate.class))
            .orShould()
            .callMethod(Math.class, "random")
            .orShould()
            .callConstructor(java.util.Random.class);

    private static DescribedPredicate<JavaClass> isOneOf(Class<?>... types) {
        return DescribedPredicate.describe(
                "clocks",
                c -> java.util.Arrays.stream(types).anyMatch(t -> c.getName().equals(t.getName())));
    }
}
