package org.heatfloor.examples;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.heatfloor.area.Door;
import org.heatfloor.area.JointRule;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.PriorityZone;
import org.heatfloor.area.Room;
import org.heatfloor.area.TradeLength;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.electrical.InstallationDetails;
import org.heatfloor.electrical.Supply;
import org.heatfloor.grid.Membrane;
import org.heatfloor.plan.HeatDetails;
import org.heatfloor.takeoff.Bedding;
import org.heatfloor.takeoff.TileSpec;
import org.heatfloor.thermal.BuildUp;
import org.heatfloor.thermal.Climate;
import org.locationtech.jts.geom.Point;

/**
 * What a room file says, judged, in the library's own terms.
 *
 * @param name the room's name
 * @param coordinateUnit the unit the file's coordinates are written in; the geometry here is in metres
 * @param room the floor
 * @param wallClearance from walls to the cable, where given
 * @param keepOuts places without cable
 * @param doors the doors
 * @param priorityZones where people stand
 * @param membrane the membrane
 * @param origin the centre of one stud, where given, in metres
 * @param angle the lattice's turn, where given
 * @param sheetSlip how far sheets were found out of phase, where given
 * @param jointRule how large a bay of the floor may be, where not the rule of the code's country
 * @param cable how cable is to be laid and what may be bought
 * @param supply the supply and its code
 * @param installation what else is said of the electrical installation
 * @param buildUp the layers, where given
 * @param climate the temperatures around, where given
 * @param heat what more is known of the heat, where given
 * @param tile the tile, where given
 * @param bedding trowels and mortar, where given
 */
record RoomFile(
        String name,
        LengthUnit coordinateUnit,
        Room room,
        Optional<TradeLength> wallClearance,
        List<KeepOut> keepOuts,
        List<Door> doors,
        List<PriorityZone> priorityZones,
        Membrane membrane,
        Optional<Point> origin,
        Optional<Quantity<Angle>> angle,
        Optional<Quantity<Length>> sheetSlip,
        Optional<JointRule> jointRule,
        Cable cable,
        Supply supply,
        InstallationDetails installation,
        Optional<BuildUp> buildUp,
        Optional<Climate> climate,
        Optional<HeatDetails> heat,
        Optional<TileSpec> tile,
        Optional<Bedding> bedding) {

    RoomFile {
        keepOuts = List.copyOf(keepOuts);
        doors = List.copyOf(doors);
        priorityZones = List.copyOf(priorityZones);
    }

    /**
     * How cable is to be laid and what may be bought.
     *
     * @param cableHeight the cable's axis above the underside of the heated layer, where given
     * @param lengthTolerance share of its length by which a cable may be longer or shorter than stated, where given
     */
    record Cable(
            TradeLength minSpacing,
            TradeLength maxSpacing,
            Quantity<Length> minBendRadius,
            Point start,
            Quantity<Length> riser,
            Quantity<Length> jointLength,
            Optional<Quantity<Length>> cableHeight,
            boolean floorSensor,
            Optional<Quantity<Dimensionless>> lengthTolerance,
            List<HeatingCable> catalogue) {

        Cable {
            catalogue = List.copyOf(catalogue);
        }
    }
}
