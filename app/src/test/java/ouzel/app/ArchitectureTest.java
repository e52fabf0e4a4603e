package ouzel.app;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.conditions.ArchConditions.accessTargetWhere;
import static com.tngtech.archunit.lang.conditions.ArchConditions.never;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.ArchConfiguration;
import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Clock;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ouzel.protocol.message.Bytes;

/** What may know what, over all modules. */
class ArchitectureTest {
    private static final JavaClasses PROGRAM = program();

    private static final String[] PURE = {
        "ouzel.protocol.frame..",
        "ouzel.protocol.message..",
        "ouzel.protocol.codec..",
        "ouzel.protocol.session..",
        "ouzel.simulator.physics..",
        "ouzel.simulator.plant..",
        "ouzel.simulator.controller..",
        "ouzel.simulator.radio..",
        "ouzel.app.desk..",
        "ouzel.app.estimate..",
        "ouzel.app.screen.model..",
    };

    private static final String[] SCREEN_LIBRARIES = {
        "java.awt..", "javax.swing..", "com.formdev..", "org.jfree..", "net.miginfocom..",
    };

    private static final Set<String> CLOCK_METHODS = Set.of(
            "java.lang.System.nanoTime",
            "java.lang.System.currentTimeMillis",
            "java.time.Instant.now",
            "java.time.LocalDate.now",
            "java.time.LocalDateTime.now",
            "java.time.ZonedDateTime.now",
            "java.time.OffsetDateTime.now");

    @Test
    void pureCodeReadsNoFileSocketOrDatabase() {
        holds(noClasses()
                .that(resideInAnyPackage(PURE))
                .should()
                .dependOnClassesThat(resideInAnyPackage(
                        "java.io..", "java.net..", "java.nio.file..", "java.nio.channels..", "java.sql..")));
    }

    @Test
    void pureCodeKnowsNoThreads() {
        holds(noClasses()
                .that(resideInAnyPackage(PURE))
                .should()
                .dependOnClassesThat(resideInAPackage("java.util.concurrent..")
                        .or(JavaClass.Predicates.assignableTo(Thread.class))
                        .or(JavaClass.Predicates.assignableTo(ThreadLocal.class))));
    }

    @Test
    void pureCodeKnowsNoScreenNettyOrSerialPort() {
        holds(noClasses()
                .that(resideInAnyPackage(PURE))
                .should()
                .dependOnClassesThat(
                        resideInAnyPackage(SCREEN_LIBRARIES).or(resideInAnyPackage("io.netty..", "com.fazecast.."))));
    }

    @Test
    void pureCodeIsToldTheTime() {
        holds(classes()
                .that(resideInAnyPackage(PURE))
                .should(never(accessTargetWhere(asksAClock())))
                .allowEmptyShould(false));
    }

    @Test
    void screenLibrariesAreForTheScreenAndTheCheckForADisplayOnly() {
        holds(noClasses()
                .that(DescribedPredicate.not(resideInAnyPackage("ouzel.app.screen..", "ouzel.app.command..")))
                .should()
                .dependOnClassesThat(resideInAnyPackage(SCREEN_LIBRARIES)));
    }

    @Test
    void nettyIsForTheLinkOnly() {
        holds(noClasses()
                .that(DescribedPredicate.not(
                        resideInAnyPackage("ouzel.protocol.netty..", "ouzel.app.link..", "ouzel.app.flight..")))
                .should()
                .dependOnClassesThat(resideInAPackage("io.netty..")));
    }

    @Test
    void serialPortsAreForTheLinkOnly() {
        holds(noClasses()
                .that(DescribedPredicate.not(resideInAPackage("ouzel.app.link..")))
                .should()
                .dependOnClassesThat(resideInAPackage("com.fazecast..")));
    }

    @Test
    void modulesKnowEachOtherInOneDirection() {
        holds(layeredArchitecture()
                .consideringOnlyDependenciesInLayers()
                .layer("app")
                .definedBy("ouzel.app..")
                .layer("simulator")
                .definedBy("ouzel.simulator..")
                .layer("protocol")
                .definedBy("ouzel.protocol..")
                .whereLayer("app")
                .mayNotBeAccessedByAnyLayer()
                .whereLayer("simulator")
                .mayOnlyBeAccessedByLayers("app"));
    }

    @Test
    void theFoldAndTheEstimatesKnowOnlyTheProtocol() {
        holds(noClasses()
                .that(resideInAnyPackage("ouzel.app.desk..", "ouzel.app.estimate.."))
                .should()
                .dependOnClassesThat(resideInAPackage("ouzel..")
                        .and(DescribedPredicate.not(
                                resideInAnyPackage("ouzel.app.desk..", "ouzel.app.estimate..", "ouzel.protocol..")))));
    }

    @Test
    void nobodyButTheCommandLineKnowsTheCommandLine() {
        holds(noClasses()
                .that(DescribedPredicate.not(resideInAPackage("ouzel.app.command..")))
                .should()
                .dependOnClassesThat(resideInAnyPackage("ouzel.app.command..", "picocli..")));
    }

    @Test
    void packagesKnowEachOtherWithoutCycles() {
        holds(slices().matching("ouzel.(**)").should().beFreeOfCycles());
    }

    @Test
    void nobodyWritesToTheStandardStreams() {
        holds(NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS);
    }

    @Test
    void whatIsThrownSaysWhatItIs() {
        holds(NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS);
    }

    @Test
    void messagesAreRecordsEnumsOrInterfaces() {
        holds(classes()
                .that(resideInAPackage("ouzel.protocol.message.."))
                .and()
                .arePublic()
                .and()
                .areNotAssignableTo(Bytes.class)
                .should()
                .beRecords()
                .orShould()
                .beEnums()
                .orShould()
                .beInterfaces());
    }

    private static void holds(ArchRule rule) {
        rule.check(PROGRAM);
    }

    private static JavaClasses program() {
        // The rules need other people's classes by name only; reading those too takes ten times as long.
        ArchConfiguration.get().setResolveMissingDependenciesFromClassPath(false);
        return new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("ouzel");
    }

    private static DescribedPredicate<JavaAccess<?>> asksAClock() {
        DescribedPredicate<JavaAccess<?>> listed = DescribedPredicate.describe(
                "a clock is asked",
                access -> CLOCK_METHODS.contains(access.getTargetOwner().getName() + "."
                        + access.getTarget().getName()));
        DescribedPredicate<JavaAccess<?>> clock = DescribedPredicate.describe(
                "a clock is made", access -> access.getTargetOwner().isEquivalentTo(Clock.class));
        return listed.or(clock);
    }
}
