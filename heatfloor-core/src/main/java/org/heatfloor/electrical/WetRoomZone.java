package org.heatfloor.electrical;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * The zones of a room with a bath or shower, IEC 60364-7-701 and BS 7671 section 701 (from memory). The NEC has no such
 * zones; it keeps switches out of tub and shower spaces.
 */
public enum WetRoomZone {
    /** Inside the basin of the bath or shower. */
    ZONE_0,
    /** Above the basin, or within 1.2 m of the outlet of a shower without basin, up to 2.25 m above the floor. */
    ZONE_1,
    /** Within 0.6 m beside zone 1 of a basin, up to 2.25 m above the floor. */
    ZONE_2,
    /** Outside the zones. */
    OUTSIDE;

    private static final double HEIGHT_METRES = 2.25;
    private static final double BESIDE_METRES = 0.6;
    private static final double OPEN_SHOWER_METRES = 1.2;
    private static final double SLACK = 1e-9;

    /**
     * The zone of a place near a bath or a shower with basin.
     *
     * @param fromBasin horizontal distance from the basin's edge; zero above the basin
     * @param height height above the floor; the place must not be inside the basin, which is zone 0
     * @return the zone
     * @throws IllegalArgumentException if a distance is negative
     */
    public static WetRoomZone atBasin(Quantity<Length> fromBasin, Quantity<Length> height) {
        double distance = Si.notNegative("distance from the basin", fromBasin, Units.METRE);
        if (Si.notNegative("height above the floor", height, Units.METRE) > HEIGHT_METRES + SLACK) {
            return OUTSIDE;
        }
        if (distance <= SLACK) {
            return ZONE_1;
        }
        return distance <= BESIDE_METRES + SLACK ? ZONE_2 : OUTSIDE;
    }

    /**
     * The zone of a place near a shower without basin.
     *
     * @param fromOutlet horizontal distance from the fixed water outlet
     * @param height height above the floor
     * @return the zone
     * @throws IllegalArgumentException if a distance is negative
     */
    public static WetRoomZone atOpenShower(Quantity<Length> fromOutlet, Quantity<Length> height) {
        double distance = Si.notNegative("distance from the outlet", fromOutlet, Units.METRE);
        boolean below = Si.notNegative("height above the floor", height, Units.METRE) <= HEIGHT_METRES + SLACK;
        return below && distance <= OPEN_SHOWER_METRES + SLACK ? ZONE_1 : OUTSIDE;
    }

    /**
     * Whether a thermostat or other control at mains voltage may stand here.
     *
     * @param code the code
     * @param name name of the control
     * @return an error in zones 0 to 2 under IEC 60364 and BS 7671 and in zones 0 and 1 under the NEC (tub or shower space),
     *     otherwise a note
     */
    public Finding control(ElectricalCode code, String name) {
        boolean forbidden = code.isNec() ? this == ZONE_0 || this == ZONE_1 : this != OUTSIDE;
        Source source = Source.fromMemory(
                code.isNec()
                        ? code + ", 404.4(C)"
                        : code.name().startsWith("BS") ? code + ", 701.512.3" : "IEC 60364-7-701:2006, 701.512.3");
        return Finding.of(
                forbidden ? Severity.ERROR : Severity.NOTE,
                name,
                forbidden
                        ? "a mains control does not belong in " + words() + " of a bath or shower: move it outside the"
                                + " zones or out of the room"
                        : "a mains control may stand here, " + words() + ", unless the local code says otherwise",
                source);
    }

    private String words() {
        return switch (this) {
            case ZONE_0 -> "zone 0";
            case ZONE_1 -> "zone 1";
            case ZONE_2 -> "zone 2";
            case OUTSIDE -> "outside the zones";
        };
    }
}
