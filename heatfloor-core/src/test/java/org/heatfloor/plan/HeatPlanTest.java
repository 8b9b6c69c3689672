package org.heatfloor.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.heatfloor.plan.PlanChecks.watts;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.Currency;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.heatfloor.area.HeatableArea;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.CableRoute;
import org.heatfloor.thermal.ColdPlace;
import org.heatfloor.thermal.FloorCover;
import org.heatfloor.thermal.FloorShape;
import org.heatfloor.thermal.HeatedWeek;
import org.heatfloor.thermal.LimitZone;
import org.heatfloor.thermal.SeasonEnergy;
import org.heatfloor.thermal.SurfaceLimit;
import org.heatfloor.thermal.Tariff;
import org.heatfloor.thermal.WeeklySchedule;
import org.junit.jupiter.api.Test;

/** What a plan says of the floor's heat, on the routes of the planned washroom. */
class HeatPlanTest {

    private static HeatPlan with(Consumer<HeatDetails.Builder> details) {
        HeatDetails.Builder builder = HeatDetails.builder();
        details.accept(builder);
        Brief brief = Schoolrooms.washroomCovered(Schoolrooms.fullClimate())
                .rules(Schoolrooms.washroomRules())
                .catalogue(Schoolrooms.washroomCatalogue())
                .heatDetails(builder.build())
                .build();
        Plan plan = SchoolPlans.washroom().plan();
        List<CableRoute> routes =
                plan.cables().stream().map(PlannedCable::route).toList();
        List<HeatingCable> cables =
                plan.cables().stream().map(PlannedCable::cable).toList();
        return HeatPlan.of(
                        brief,
                        routes,
                        cables,
                        plan.cables().stream()
                                .map(c -> c.sensor().stream().toList())
                                .toList(),
                        HeatableArea.of(brief.room, brief.wallClearance, brief.keepOuts, brief.membrane.studPitch())
                                .heatableRegion())
                .orElseThrow();
    }

    private static double celsius(Quantity<Temperature> temperature) {
        return Si.in("temperature", temperature, Units.CELSIUS);
    }

    private static Finding finding(HeatPlan heat, String subject) {
        return heat.findings().stream()
                .filter(f -> f.subject().equals(subject))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no finding on " + subject + " in " + heat.findings()));
    }

    private static FloorShape rectangle(double x0, double y0, double x1, double y1) {
        return FloorShape.rectangle(Amounts.metres(x0), Amounts.metres(y0), Amounts.metres(x1), Amounts.metres(y1));
    }

    @Test
    void plansTellOfTheFloorAsLaid() {
        Plan plan = SchoolPlans.washroom().plan();
        RoomHeat room = plan.roomHeat().orElseThrow();
        FloorHeat floor = room.floor();
        assertThat(celsius(floor.floor().min()))
                .isLessThan(celsius(floor.heated().min()));
        assertThat(celsius(floor.heated().min()))
                .isLessThan(celsius(floor.heated().mean()));
        assertThat(celsius(floor.heated().mean())).isBetween(29.5, 31.5);
        assertThat(floor.law()).isEqualTo("floor characteristic curve");
        // One cable heats it all.
        assertThat(plan.cables().get(0).heat().orElseThrow().asLaid()).isEqualTo(floor.heated());
        SensorHeat sensor = floor.sensors().get(0);
        assertThat(celsius(sensor.reading().reading()))
                .isBetween(celsius(floor.heated().min()), celsius(floor.heated().max()));
        // Seven studs off, the flange stays about as warm as the room.
        assertThat(floor.seals()).singleElement().satisfies(seal -> {
            assertThat(seal.keepOut()).isEqualTo("pan");
            assertThat(celsius(seal.warmest())).isBetween(20.0, 25.0);
        });
        for (ColdPlace place : floor.coldPlaces()) {
            assertThat(celsius(place.lowest())).isLessThan(celsius(floor.coldBelow()));
        }
        // What goes up is what the cable takes less what goes down under all of the floor.
        double supplied = watts(plan.cables().get(0).rating().power().nominal());
        double down = watts(plan.area()
                .floor()
                .multiply(Amounts.of(1, Units.WATT_PER_SQUARE_METRE))
                .asType(javax.measure.quantity.Power.class));
        assertThat(watts(room.heatOutput())).isBetween(supplied - 8 * down, supplied - 3 * down);
        assertThat(room.use().week()).isEmpty();
        assertThat(room.use().energyPerWeek()).isEmpty();
        List<String> subjects = plan.findings().stream().map(Finding::subject).toList();
        assertThat(subjects).contains("surface law", "comfort", "pan", "cold places", "studs", "rugs", "room heat");
    }

    @Test
    void choiceAndPlanCallOneFigureTheOutput() {
        SchoolPlans.Planned room = SchoolPlans.washroom();
        assertThat(HeatPlan.outputWatts(
                                room.brief(),
                                room.plan().cables().stream()
                                        .map(PlannedCable::route)
                                        .toList(),
                                room.plan().cables().stream()
                                        .map(PlannedCable::cable)
                                        .toList())
                        .orElseThrow())
                .isEqualTo(watts(room.plan().roomHeat().orElseThrow().heatOutput()));
    }

    /** Studs warm the floor above the cable; where nothing is known of them the plan says by how much at most. */
    @Test
    void studsAreReckonedWithOrToldOf() {
        HeatPlan unknown = with(d -> {});
        HeatPlan known = with(d -> d.studConductivity(Amounts.wattsPerMetreKelvin(0.2)));
        HeatPlan hollow = with(d -> d.studConductivity(Amounts.wattsPerMetreKelvin(0.03)));
        double uniform = celsius(unknown.room().floor().heated().max());
        double studded = celsius(known.room().floor().heated().max());
        double most = celsius(unknown.room().floor().ifStudsHollow().orElseThrow());
        assertThat(studded).isBetween(uniform + 0.05, most);
        assertThat(celsius(hollow.room().floor().heated().max())).isCloseTo(most, within(1e-9));
        assertThat(most - uniform).isBetween(0.2, 0.6);
        assertThat(finding(unknown, "studs").severity()).isEqualTo(Severity.WARNING);
        assertThat(known.room().floor().ifStudsHollow()).isEmpty();
        assertThat(known.findings()).noneMatch(f -> f.subject().equals("studs"));
        assertThat(watts(known.room().heatOutput()))
                .isCloseTo(watts(unknown.room().heatOutput()), within(0.5));
    }

    @Test
    void limitsHoldWhereTheyHold() {
        HeatPlan heat = with(d -> d.limitZone(
                        new LimitZone("under the window", rectangle(1.2, 0, 2.41, 0.9), SurfaceLimit.PERIPHERAL))
                .limitZone(new LimitZone("beyond the wall", rectangle(5, 5, 6, 6), SurfaceLimit.OCCUPIED)));
        assertThat(finding(heat, "under the window").severity()).isEqualTo(Severity.NOTE);
        assertThat(finding(heat, "under the window").limit()).contains(Amounts.celsius(35));
        assertThat(finding(heat, "beyond the wall").message()).contains("was not judged");
        assertThat(finding(heat, "rest of the floor").limit()).contains(Amounts.celsius(33));
        HeatPlan occupied = with(d ->
                d.limitZone(new LimitZone("where one sits", rectangle(1.2, 0.9, 2.1, 1.4), SurfaceLimit.OCCUPIED)));
        assertThat(finding(occupied, "where one sits").severity()).isEqualTo(Severity.WARNING);
    }

    @Test
    void rugsAreLaidOnTheFloor() {
        HeatPlan heat = with(d -> d.sheathLimit(Amounts.celsius(40))
                .cover(new FloorCover(
                        "rug", rectangle(1, 0.8, 1.8, 1.4), Amounts.of(0.1, Units.SQUARE_METRE_KELVIN_PER_WATT)))
                .cover(new FloorCover(
                        "elsewhere", rectangle(5, 5, 6, 6), Amounts.of(0.1, Units.SQUARE_METRE_KELVIN_PER_WATT))));
        assertThat(heat.room().floor().covers()).singleElement().satisfies(part -> {
            assertThat(celsius(part.tile().max())).isGreaterThan(celsius(part.tileOpen()) + 4);
        });
        assertThat(finding(heat, "rug").isError()).isTrue();
        assertThat(finding(heat, "elsewhere").message()).contains("was not judged");
        assertThat(heat.findings()).noneMatch(f -> f.subject().equals("rugs"));
    }

    @Test
    void useTellsStartEnergyAndCost() {
        WeeklySchedule schedule = new WeeklySchedule(
                Amounts.celsius(20),
                List.of(new WeeklySchedule.Period(
                        EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY),
                        LocalTime.of(7, 0),
                        LocalTime.of(9, 0),
                        Amounts.celsius(27))));
        HeatPlan heat = with(d -> d.schedule(schedule)
                .floorTemperature(Amounts.celsius(27))
                .tariff(new Tariff(new BigDecimal("0.30"), Currency.getInstance("EUR")))
                .season(new HeatingSeason(
                        SeasonEnergy.of(Amounts.kelvins(2463), Amounts.of(1, Units.DAY)),
                        Amounts.of(10, Units.WATT_PER_KELVIN))));
        FloorUse use = heat.room().use();
        HeatedWeek week = use.week().orElseThrow();
        assertThat(week.warmings()).hasSize(5).allMatch(HeatedWeek.Warming::reached);
        double lead = Si.in("lead", week.longestLead(), Units.MINUTE);
        double cold = Si.in("time", use.timeToWanted().orElseThrow(), Units.MINUTE);
        assertThat(lead).isBetween(20.0, 240.0);
        assertThat(cold).isBetween(30.0, 300.0);
        double weekly = Si.in("energy", use.energyPerWeek().orElseThrow(), Units.KILOWATT_HOUR);
        // Less than full power all week, more than full power over the leads alone.
        assertThat(weekly).isBetween(0.3465 * 5 * lead / 60, 0.3465 * 168);
        assertThat(use.costPerWeek().orElseThrow().doubleValue()).isCloseTo(0.3 * weekly, within(0.006));
        double share = watts(heat.room().heatOutput()) / 346.5;
        assertThat(Si.in("season", use.energyPerSeason().orElseThrow(), Units.KILOWATT_HOUR))
                .isCloseTo(10 * 2463 * 24 / 1000.0 / share, within(0.5));
        assertThat(finding(heat, "schedule").message()).contains("Monday 07:00").contains("ahead");
        // Comfort is judged at what is wanted.
        assertThat(finding(heat, "comfort").message()).startsWith("At 27.0 °C");
    }

    @Test
    void whatFullPowerNeverReachesIsTold() {
        HeatPlan heat = with(d -> d.floorTemperature(Amounts.celsius(45)));
        assertThat(heat.room().use().timeToWanted()).isEqualTo(Optional.empty());
        assertThat(finding(heat, "heat-up").severity()).isEqualTo(Severity.WARNING);
        assertThat(finding(heat, "comfort").message()).contains("far too warm");
    }
}
