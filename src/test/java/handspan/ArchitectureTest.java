package handspan;

import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.equivalentTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.conditions.ArchConditions.dependOnClassesThat;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Clock;
import java.time.Instant;
import java.util.Date;
import java.util.Timer;
import java.util.concurrent.Executors;
import java.util.concurrent.ForkJoinPool;

/** The shape of the house: wings, what they may import, and where each library lives. */
@AnalyzeClasses(packages = "handspan", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final String ROOT = "handspan.";

    private static final String[] COMMAND = {ROOT + "command"};
    private static final String[] SHOW = {
        ROOT + "show.chart", ROOT + "show.report", ROOT + "show.scene", ROOT + "show.window"
    };
    private static final String[] WIRING = {ROOT + "wiring", ROOT + "wiring.evening"};
    private static final String[] OUTSIDE = {
        ROOT + "outside.serial",
        ROOT + "outside.osc",
        ROOT + "outside.osc.packet",
        ROOT + "outside.osc.remote",
        ROOT + "outside.take",
        ROOT + "outside.simulate",
        ROOT + "outside.tone",
        ROOT + "outside.midi",
        ROOT + "outside.log"
    };
    private static final String[] LIVE = {ROOT + "live.path", ROOT + "live.session"};
    private static final String[] PROFILE = {ROOT + "profile"};
    private static final String[] ROOM = {ROOT + "room", ROOT + "room.calibrate", ROOT + "room.budget"};
    private static final String[] MUSIC = {
        ROOT + "music.tuning",
        ROOT + "music.level",
        ROOT + "music.send",
        ROOT + "music.passage",
        ROOT + "music.practice"
    };
    private static final String[] HAND = {ROOT + "hand.smooth", ROOT + "hand.trial"};
    private static final String[] INSTRUMENT = {
        ROOT + "instrument.line", ROOT + "instrument.sensor", ROOT + "instrument.survey"
    };
    private static final String[] NUMBER = {ROOT + "number.units", ROOT + "number.fit"};

    private static String[] all(String[]... wings) {
        return java.util.Arrays.stream(wings).flatMap(java.util.Arrays::stream).toArray(String[]::new);
    }

    @ArchTest
    static final ArchRule everyClassResidesInAListedPackage = classes()
            .should()
            .resideInAnyPackage(
                    all(COMMAND, SHOW, WIRING, OUTSIDE, LIVE, PROFILE, ROOM, MUSIC, HAND, INSTRUMENT, NUMBER));

    @ArchTest
    static final ArchRule importsGoDownward = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("command")
            .definedBy(COMMAND)
            .layer("show")
            .definedBy(SHOW)
            .layer("wiring")
            .definedBy(WIRING)
            .layer("outside")
            .definedBy(OUTSIDE)
            .layer("live")
            .definedBy(LIVE)
            .layer("profile")
            .definedBy(PROFILE)
            .layer("room")
            .definedBy(ROOM)
            .layer("music")
            .definedBy(MUSIC)
            .layer("hand")
            .definedBy(HAND)
            .layer("instrument")
            .definedBy(INSTRUMENT)
            .layer("number")
            .definedBy(NUMBER)
            .whereLayer("command")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("show")
            .mayOnlyBeAccessedByLayers("command")
            .whereLayer("wiring")
            .mayOnlyBeAccessedByLayers("command", "show")
            .whereLayer("outside")
            .mayOnlyBeAccessedByLayers("command", "show", "wiring")
            .whereLayer("live")
            .mayOnlyBeAccessedByLayers("command", "show", "wiring", "outside")
            .whereLayer("profile")
            .mayOnlyBeAccessedByLayers("command", "show", "wiring", "outside", "live")
            .whereLayer("room")
            .mayOnlyBeAccessedByLayers("command", "show", "wiring", "outside", "live", "profile")
            .whereLayer("music")
            .mayOnlyBeAccessedByLayers("command", "show", "wiring", "outside", "live", "profile", "room")
            .whereLayer("hand")
            .mayOnlyBeAccessedByLayers("command", "show", "wiring", "outside", "live", "profile", "room", "music")
            .whereLayer("instrument")
            .mayOnlyBeAccessedByLayers(
                    "command", "show", "wiring", "outside", "live", "profile", "room", "music", "hand");

    @ArchTest
    static final ArchRule wingsHaveNoCircle =
            slices().matching("handspan.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule packagesHaveNoCircle =
            slices().matching("handspan.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule adaptersIgnoreEachOther =
            slices().matching("handspan.outside.(*)..").should().notDependOnEachOther();

    @ArchTest
    static final ArchRule theSimulatorKnowsNeitherSensorsNorFits = noClasses()
            .that()
            .resideInAPackage(ROOT + "outside.simulate")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    ROOT + "instrument..", ROOT + "number.fit", ROOT + "hand..", ROOT + "room..", ROOT + "live..");

    @ArchTest
    static final ArchRule smoothingSpeaksMillimetresOnly = noClasses()
            .that()
            .resideInAPackage(ROOT + "hand..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(ROOT + "instrument..");

    @ArchTest
    static final ArchRule smoothingMakesNoFits = noClasses()
            .that()
            .resideInAPackage(ROOT + "hand.smooth")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(ROOT + "number.fit", ROOT + "hand.trial");

    @ArchTest
    static final ArchRule pureCodeTouchesNoOutsideWorld = noClasses()
            .that()
            .resideInAnyPackage(all(ROOM, MUSIC, HAND, INSTRUMENT, NUMBER))
            .or()
            .resideInAPackage(ROOT + "live.path")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "java.awt..",
                    "javax.swing..",
                    "java.net..",
                    "java.io..",
                    "java.nio.file..",
                    "java.nio.channels..",
                    "java.util.concurrent..",
                    "com.fasterxml..",
                    "org.jfree..",
                    "org.apache.pdfbox..",
                    "com.fazecast..",
                    "com.illposed..",
                    "picocli..");

    @ArchTest
    static final ArchRule timeIsAnArgument = noClasses()
            .that()
            .resideOutsideOfPackages(ROOT + "wiring", ROOT + "command")
            .should()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(Instant.class, "now")
            .orShould()
            .callMethodWhere(target(owner(equivalentTo(Clock.class))))
            .orShould()
            .callConstructor(Date.class);

    /**
     * The session's two threads, targets, recordings and sound with their queues, those who look after targets, keys
     * and endings.
     */
    @ArchTest
    static final ArchRule onlyTheseMakeThreads = noClasses()
            .that()
            .resideOutsideOfPackages(
                    ROOT + "live.session",
                    ROOT + "outside.osc",
                    ROOT + "outside.take",
                    ROOT + "outside.tone",
                    ROOT + "outside.midi",
                    ROOT + "wiring",
                    ROOT + "wiring.evening",
                    ROOT + "command")
            .should()
            .callConstructorWhere(target(owner(assignableTo(Thread.class))))
            .orShould()
            .callConstructorWhere(target(owner(assignableTo(Timer.class))))
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(Executors.class)
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(ForkJoinPool.class);

    @ArchTest
    static final ArchRule onlyWiringJoinsOutsideAndLive = noClasses()
            .that()
            .resideInAnyPackage(all(SHOW, COMMAND))
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(OUTSIDE);

    @ArchTest
    static final ArchRule swingAndChartsLiveInShow =
            livesIn("handspan.show..", "javax.swing..", "java.awt..", "org.jfree..", "com.formdev..");

    @ArchTest
    static final ArchRule scenesKnowNoToolkit = noClasses()
            .that()
            .resideInAPackage(ROOT + "show.scene")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javax.swing..", "java.awt..", "org.jfree..", "com.formdev..", "java.io..");

    @ArchTest
    static final ArchRule thePdfLibraryLivesInReport =
            livesIn("handspan.show.report", "org.apache.pdfbox..", "org.apache.fontbox..", "de.rototor..");

    @ArchTest
    static final ArchRule theDrawingLibraryLivesInReport = livesIn("handspan.show.report", "org.apache.batik..");

    @ArchTest
    static final ArchRule theSerialLibraryLivesInSerial = livesIn("handspan.outside.serial", "com.fazecast..");

    @ArchTest
    static final ArchRule theOscLibraryLivesInOsc = livesIn("handspan.outside.osc.packet", "com.illposed..");

    @ArchTest
    static final ArchRule theSoundDeviceLivesInTone = livesIn("handspan.outside.tone", "javax.sound.sampled..");

    @ArchTest
    static final ArchRule theMidiLibraryLivesInMidi = livesIn("handspan.outside.midi", "javax.sound.midi..");

    @ArchTest
    static final ArchRule theCommandLineLibraryLivesInCommand = livesIn("handspan.command", "picocli..");

    @ArchTest
    static final ArchRule theNumericsLibraryLivesWhereThingsAreMeasured = noClasses()
            .that()
            .resideOutsideOfPackages(ROOT + "number.fit", ROOT + "room.budget", ROOT + "hand.trial")
            .should(dependOnClassesThat(resideInAnyPackage("org.hipparchus..")));

    @ArchTest
    static final ArchRule jsonLivesInProfileAndCommand = noClasses()
            .that()
            .resideOutsideOfPackages(ROOT + "profile", ROOT + "command")
            .should(dependOnClassesThat(resideInAnyPackage("com.fasterxml..")));

    @ArchTest
    static final ArchRule consoleLivesInCommand =
            noClasses().that().resideOutsideOfPackage(ROOT + "command").should(ACCESS_STANDARD_STREAMS);

    @ArchTest
    static final ArchRule exceptionsHaveAName = NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS;

    @ArchTest
    static final ArchRule nothingStaticChanges =
            fields().that().areStatic().should().beFinal();

    private static ArchRule livesIn(String home, String... libraries) {
        return noClasses()
                .that()
                .resideOutsideOfPackage(home)
                .should(dependOnClassesThat(resideInAnyPackage(libraries)));
    }
}
