package org.heatfloor.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.CableToLay;
import org.heatfloor.routing.Effort;
import org.heatfloor.routing.RouteOutcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nearly full rooms that the router once failed in. */
class FullRoomTest {

    /** 31.4 m; on lines alone the longest route that was found took 30.87 m. The bound is 33.40 m. */
    @Test
    void theCableIsLaidExactlyWhereLinesAloneAreTooShort() throws BadRoomFile {
        RoomFile room = RoomFileReader.read(Path.of("rooms", "full", "two-flanges.json"));
        RouterCase floor = PrototypeComparison.routerCase(room);

        RouterCase.Outcome outcome = lay(room);

        assertThat(outcome.answer()).isInstanceOf(RouteOutcome.Laid.class);
        assertThat(outcome.clean()).isTrue();
        assertThat(metres(outcome.route().orElseThrow().laidLength())).isEqualTo(31.4, within(1e-6));
        assertThat(metres(floor.router().capacity(0))).isEqualTo(33.40, within(0.005));
    }

    /** The lead follows a wall that slants at 45° and turns in sharply; the joint needs a straight piece all the same. */
    @Test
    void theJointLiesStraightBehindASharpTurnOfTheLead() throws BadRoomFile {
        RouterCase.Outcome outcome = lay(RoomFileReader.read(Path.of("rooms", "full", "slanting-wall.json")));

        assertThat(outcome.answer()).isInstanceOf(RouteOutcome.Laid.class);
        assertThat(outcome.clean()).isTrue();
    }

    /** A joint moved on along its run, to take up length too much, takes lead with it: the lead must be long enough for that. */
    @Test
    void theJointIsMovedNoFartherThanTheLeadReaches() throws BadRoomFile {
        RouterCase.Outcome outcome = lay(RoomFileReader.read(Path.of("rooms", "full", "long-way-of-the-lead.json")));

        assertThat(outcome.answer()).isInstanceOf(RouteOutcome.Laid.class);
        assertThat(outcome.clean()).isTrue();
    }

    /** A route was once found for 44.55 m and none for this length, 43.209 m. */
    @Test
    void aRoomOnceMissedIsLaid() throws BadRoomFile {
        RouterCase.Outcome outcome = lay(RoomFileReader.read(Path.of("rooms", "full", "among-columns.json")));

        assertThat(outcome.clean()).isTrue();
        assertThat(metres(outcome.route().orElseThrow().laidLength())).isEqualTo(43.209, within(1e-6));
    }

    /** With this seed a search for this length ends below it, one for the longest cable on 33.18 m: that route is shortened. */
    @Test
    void aLongerRouteIsShortened() throws BadRoomFile {
        RoomFile room = RoomFileReader.read(Path.of("rooms", "missed", "room-066.json"));
        RouterCase floor = PrototypeComparison.routerCase(room);

        RouterCase.Outcome outcome = floor.lay(floor.router(), cable(room, Amounts.metres(32.14)), Effort.NORMAL, 5);

        assertThat(outcome.clean()).isTrue();
        assertThat(metres(outcome.route().orElseThrow().laidLength())).isEqualTo(32.14, within(1e-6));
    }

    /** Rooms in which the router finds no route though the bound allows one; that says so and proves nothing. */
    @ParameterizedTest
    @ValueSource(ints = {66, 269, 338})
    void whatIsNotFoundLiesBetweenTheLongestFoundAndTheBound(int number) throws BadRoomFile {
        RouterCase.Outcome outcome =
                lay(RoomFileReader.read(Path.of("rooms", "missed", String.format("room-%03d.json", number))));

        assertThat(outcome.answer()).isInstanceOfSatisfying(RouteOutcome.NotFound.class, missed -> {
            double wanted = metres(outcome.cable().length());
            assertThat(metres(missed.longestFound())).isBetween(0.9 * wanted, wanted);
            assertThat(metres(missed.capacity())).isGreaterThan(wanted);
        });
    }

    private static RouterCase.Outcome lay(RoomFile room) {
        RouterCase floor = PrototypeComparison.routerCase(room);
        return floor.lay(
                floor.router(), cable(room, room.cable().catalogue().get(0).length()), Effort.NORMAL);
    }

    private static CableToLay cable(RoomFile room, Quantity<Length> length) {
        HeatingCable offer = room.cable().catalogue().get(0);
        return new CableToLay(offer.name(), offer.conductors(), length, offer.diameter(), offer.coldLead());
    }

    private static double metres(Quantity<Length> length) {
        return length.to(Units.METRE).getValue().doubleValue();
    }
}
