package org.heatfloor.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.electrical.HeatingCable;
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

    /**
     * 32.13 and 43.21 m; routes sought for these lengths came to 31.00 and 43.07 m at most, those sought for the longest cable
     * the floor may hold are longer and are shortened.
     */
    @ParameterizedTest
    @ValueSource(strings = {"beside-a-register", "among-columns"})
    void aCableShorterThanALongestRouteIsLaidToo(String name) throws BadRoomFile {
        RouterCase.Outcome outcome = lay(RoomFileReader.read(Path.of("rooms", "full", name + ".json")));

        assertThat(outcome.answer()).isInstanceOf(RouteOutcome.Laid.class);
        assertThat(outcome.clean()).isTrue();
    }

    /** Rooms in which the router finds no route though the bound allows one; that says so and proves nothing. */
    @ParameterizedTest
    @ValueSource(ints = {179, 269, 338})
    void whatIsNotFoundLiesBetweenTheLongestFoundAndTheBound(int number) throws BadRoomFile {
        RouterCase.Outcome outcome = lay(RoomFileReader.read(Path.of("rooms", "missed", "room-" + number + ".json")));

        assertThat(outcome.answer()).isInstanceOfSatisfying(RouteOutcome.NotFound.class, missed -> {
            double wanted = metres(outcome.cable().length());
            assertThat(metres(missed.longestFound())).isBetween(0.9 * wanted, wanted);
            assertThat(metres(missed.capacity())).isGreaterThan(wanted);
        });
    }

    private static RouterCase.Outcome lay(RoomFile room) {
        RouterCase floor = PrototypeComparison.routerCase(room);
        HeatingCable offer = room.cable().catalogue().get(0);
        CableToLay cable =
                new CableToLay(offer.name(), offer.conductors(), offer.length(), offer.diameter(), offer.coldLead());
        return floor.lay(floor.router(), cable, Effort.NORMAL);
    }

    private static double metres(Quantity<Length> length) {
        return length.to(Units.METRE).getValue().doubleValue();
    }
}
