package org.heatfloor;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_USE_JAVA_UTIL_LOGGING;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The arrows between packages and what no class of the library may do. */
@AnalyzeClasses(packages = "org.heatfloor", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    private static final String JTS = "org.locationtech.jts..";

    @ArchTest
    static final ArchRule QUANTITY_STANDS_ALONE =
            only("quantity").because("every other package counts on quantities, so they may count on none of them");

    @ArchTest
    static final ArchRule FINDING_KNOWS_QUANTITIES =
            only("finding").because("a judgement carries figures and nothing of the subject judged");

    @ArchTest
    static final ArchRule AREA_KNOWS_GEOMETRY =
            only("area").because("a room can be measured without any membrane, cable or circuit");

    @ArchTest
    static final ArchRule GRID_KNOWS_AREA =
            only("grid", "area").because("the studs lie in a room, whatever is laid between them");

    @ArchTest
    static final ArchRule ROUTING_KNOWS_GRID_AND_AREA =
            only("routing", "grid", "area").because("a route needs channels and clearances, no watts");

    @ArchTest
    static final ArchRule ELECTRICAL_STANDS_ALONE =
            only("electrical").because("a circuit is checked from figures, so it serves without any room");

    @ArchTest
    static final ArchRule THERMAL_STANDS_ALONE =
            only("thermal").because("a floor's temperatures follow from layers and plain coordinates");

    @ArchTest
    static final ArchRule TAKEOFF_KNOWS_AREA_AND_GRID = only("takeoff", "area", "grid")
            .because("material follows from the floor and the membrane, not from the route");

    @ArchTest
    static final ArchRule NO_GEOMETRY_WHERE_FIGURES_DO = noClasses()
            .that(resideInAnyPackage(
                    "org.heatfloor.quantity..",
                    "org.heatfloor.finding..",
                    "org.heatfloor.electrical..",
                    "org.heatfloor.thermal.."))
            .should()
            .dependOnClassesThat(resideInAPackage(JTS))
            .because("these packages take figures and plain coordinates, so they serve without a geometry library");

    @ArchTest
    static final ArchRule NO_CYCLES = slices().matching("org.heatfloor.(*)..")
            .should()
            .beFreeOfCycles()
            .because("a brief flows one way through the packages to the plan");

    @ArchTest
    static final ArchRule NO_STANDARD_STREAMS = NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS.because(
            "a library says what it has to say in its results; its host owns the console");

    @ArchTest
    static final ArchRule NO_LOGGING = NO_CLASSES_SHOULD_USE_JAVA_UTIL_LOGGING.because(
            "a library says what it has to say in its results; its host owns the log");

    @ArchTest
    static final ArchRule NO_FOREIGN_PARSING = noClasses()
            .should()
            .callMethod("tech.units.indriya.quantity.Quantities", "getQuantity", "java.lang.CharSequence")
            .because("it reads 12.5 m as 125 m under some default locales; QuantityText reads the same everywhere");

    @ArchTest
    static final ArchRule NO_GLOBAL_PROVIDER = noClasses()
            .should()
            .dependOnClassesThat()
            .haveFullyQualifiedName("javax.measure.spi.ServiceProvider")
            .because("its answer depends on what else the host has on its path");

    @ArchTest
    static final ArchRule NO_GLOBAL_FORMAT = noClasses()
            .should()
            .dependOnClassesThat()
            .haveFullyQualifiedName("tech.units.indriya.format.SimpleUnitFormat")
            .because("the shared format is global, mutable and not safe between threads");

    @ArchTest
    static final ArchRule NO_CALCULUS = noClasses()
            .should()
            .dependOnClassesThat()
            .haveFullyQualifiedName("tech.units.indriya.function.Calculus")
            .because("it looks its number system up through the context class loader of whoever calls first");

    @ArchTest
    static final ArchRule UNITS_LIBRARY_AT_THE_EDGE = noClasses()
            .that()
            .resideOutsideOfPackage("org.heatfloor.quantity..")
            .should()
            .dependOnClassesThat(resideInAPackage("tech.units.."))
            .because("quantities cross one door, so the implementation behind them can be exchanged");

    @ArchTest
    static final ArchRule NO_MUTABLE_STATICS = fields().that()
            .areStatic()
            .should()
            .beFinal()
            .because("there is no global state: two plans made at once cannot disturb each other");

    @ArchTest
    static final ArchRule CLOSED_TYPES = classes()
            .that()
            .arePublic()
            .and()
            .areNotInterfaces()
            .and()
            .areNotEnums()
            .should()
            .haveModifier(com.tngtech.archunit.core.domain.JavaModifier.FINAL)
            .because("a public type is a value: a record, an enum or a final class");

    private static ArchRule only(String own, String... others) {
        DescribedPredicate<JavaClass> allowed = resideInAnyPackage(
                        "org.heatfloor." + own + "..", "org.heatfloor.quantity..", "org.heatfloor.finding..")
                .or(DescribedPredicate.not(resideInAPackage("org.heatfloor..")));
        if (own.equals("quantity") || own.equals("finding")) {
            allowed = resideInAnyPackage("org.heatfloor." + own + "..", "org.heatfloor.quantity..")
                    .or(DescribedPredicate.not(resideInAPackage("org.heatfloor..")));
        }
        for (String other : others) {
            allowed = allowed.or(resideInAPackage("org.heatfloor." + other + ".."));
        }
        return classes()
                .that()
                .resideInAPackage("org.heatfloor." + own + "..")
                .should()
                .onlyDependOnClassesThat(allowed)
                .allowEmptyShould(true);
    }
}
