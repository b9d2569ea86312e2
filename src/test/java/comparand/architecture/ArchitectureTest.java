package comparand.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.math.BigDecimal;
import java.net.URI;
import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The floors of the house, kept: who may use whom, and what only one place may do. */
class ArchitectureTest {

    private static final String ROOT = "comparand";
    private static final JavaClasses CODE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages(ROOT);

    @Test
    void theScanSawTheCode() {
        assertThat(CODE.size()).isGreaterThan(400);
        assertThat(CODE.contain("comparand.app.Main")).isTrue();
    }

    @Test
    void everyPackageStandsInTheTableAndIsNullMarked() {
        var packages = CODE.stream().map(JavaClass::getPackage).distinct().toList();

        assertThat(packages.stream().map(p -> p.getName().substring(ROOT.length() + 1)))
                .containsExactlyInAnyOrderElementsOf(Floors.TABLE.keySet());
        assertThat(packages).allMatch(p -> p.isAnnotatedWith(NullMarked.class));
    }

    static Stream<String> packages() {
        return Floors.TABLE.keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("packages")
    void aPackageUsesOnlyWhatTheTableAllows(String name) {
        var room = requireNonNull(Floors.TABLE.get(name));
        var allowed = new ArrayList<>(List.of("java..", "org.jspecify.annotations", ROOT + "." + name));
        room.ours().forEach(p -> allowed.add(ROOT + "." + p));
        room.libraries().forEach(p -> allowed.add(p + ".."));

        classes()
                .that(resideInAPackage(ROOT + "." + name))
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage(allowed.toArray(String[]::new)))
                .because("of the line of " + name + " in Floors")
                .check(CODE);
    }

    @Test
    void noTwoPackagesUseEachOther() {
        slices().matching(ROOT + ".(**)").should().beFreeOfCycles().check(CODE);
    }

    @Test
    void everyLineOfTheTableIsNeeded() {
        Floors.TABLE.forEach((name, room) -> {
            var used = CODE.stream()
                    .filter(c -> c.getPackageName().equals(ROOT + "." + name))
                    .flatMap(c -> c.getDirectDependenciesFromSelf().stream())
                    .map(d -> d.getTargetClass().getBaseComponentType().getPackageName())
                    .collect(Collectors.toSet());
            assertThat(room.libraries())
                    .as("libraries of " + name)
                    .allMatch(library -> used.stream().anyMatch(u -> u.startsWith(library)));
        });
    }

    @Test
    void onlyTheApplicationPrintsEndsTheProgramAndLooksAtClockAndEnvironment() {
        var elsewhere = noClasses().that(not(resideInAPackage(ROOT + ".app")));
        elsewhere.should().accessField(System.class, "out").check(CODE);
        elsewhere.should().accessField(System.class, "err").check(CODE);
        elsewhere.should().callMethod(System.class, "exit", int.class).check(CODE);
        elsewhere.should().callMethod(System.class, "getenv").check(CODE);
        elsewhere
                .should()
                .callMethodWhere(new MethodNamed("now", "java.time."))
                .orShould()
                .callMethodWhere(new MethodNamed("currentTimeMillis", "java.lang.System"))
                .check(CODE);
    }

    @Test
    void nothingReachesTheNetworkOrThrowsDice() {
        noClasses()
                .should()
                .dependOnClassesThat(
                        resideInAnyPackage("java.net..", "javax.net..").and(not(type(URI.class))))
                .check(CODE);
        noClasses().should().dependOnClassesThat().areAssignableTo(Random.class).check(CODE);
        noClasses().should().callMethod(Math.class, "random").check(CODE);
    }

    @Test
    void numbersAreRoundedByOneRoutine() {
        noClasses()
                .that(not(resideInAPackage(ROOT + ".unit")))
                .should()
                .callMethodWhere(new MethodNamed("setScale", BigDecimal.class.getName()))
                .orShould()
                .callMethodWhere(new MethodNamed("round", BigDecimal.class.getName()))
                .orShould()
                .dependOnClassesThat()
                .areAssignableTo(NumberFormat.class)
                .check(CODE);
    }
}
