package org.heatfloor.plan;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.heatfloor.quantity.HeatTransferCoefficient;
import org.heatfloor.thermal.ColdPlace;
import org.heatfloor.thermal.CoveredPart;
import org.heatfloor.thermal.SurfaceSummary;

/**
 * The floor at steady full power, from the temperature field of the routes as laid.
 *
 * @param law name of the surface law
 * @param film surface film found
 * @param heated surface of the heated part
 * @param floor surface of the whole floor, unheated corners and places without cable too
 * @param sensors what each sensor reads at its place
 * @param seals how warm each water closet's flange gets
 * @param coldBelow what counts as cold: half the heated part's mean rise over the room
 * @param coldPlaces places where cable may lie that are colder than that, the largest first
 * @param covers the floor under each cover given
 * @param ifStudsHollow warmest place of the heated part if the studs were full of air, where their conductivity is not
 *     known and the membrane can be reckoned with
 */
public record FloorHeat(
        String law,
        Quantity<HeatTransferCoefficient> film,
        SurfaceSummary heated,
        SurfaceSummary floor,
        List<SensorHeat> sensors,
        List<SealHeat> seals,
        Quantity<Temperature> coldBelow,
        List<ColdPlace> coldPlaces,
        List<CoveredPart> covers,
        Optional<Quantity<Temperature>> ifStudsHollow) {

    /**
     * Copies the lists in.
     *
     * @param law name of the surface law
     * @param film surface film found
     * @param heated surface of the heated part
     * @param floor surface of the whole floor, unheated corners and places without cable too
     * @param sensors what each sensor reads at its place
     * @param seals how warm each water closet's flange gets
     * @param coldBelow what counts as cold: half the heated part's mean rise over the room
     * @param coldPlaces places where cable may lie that are colder than that, the largest first
     * @param covers the floor under each cover given
     * @param ifStudsHollow warmest place of the heated part if the studs were full of air, where their conductivity is not
     *     known and the membrane can be reckoned with
     */
    public FloorHeat {
        sensors = List.copyOf(sensors);
        seals = List.copyOf(seals);
        coldPlaces = List.copyOf(coldPlaces);
        covers = List.copyOf(covers);
    }
}
