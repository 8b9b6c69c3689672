package org.heatfloor.examples;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.area.TradeLength;
import org.heatfloor.quantity.Density;
import org.heatfloor.quantity.SpecificHeatCapacity;
import org.heatfloor.quantity.ThermalConductivity;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * What a room file says, judged and in one shape: quantities in the unit written, geometry in metres, defaults filled in.
 * Geometry is made while the file is read and never changed afterwards.
 */
record RoomFile(
        String name,
        LengthUnit coordinateUnit,
        Polygon outline,
        Optional<TradeLength> wallClearance,
        List<KeepOut> keepOuts,
        List<Door> doors,
        List<Zone> priorityZones,
        Membrane membrane,
        Cable cable,
        Supply supply,
        List<Layer> buildUp,
        Optional<Climate> climate,
        Optional<Tile> tile,
        Optional<Bedding> bedding) {

    RoomFile {
        keepOuts = List.copyOf(keepOuts);
        doors = List.copyOf(doors);
        priorityZones = List.copyOf(priorityZones);
        buildUp = List.copyOf(buildUp);
    }

    /** A place without cable; a point has a diameter. */
    record KeepOut(
            String name,
            KeepOutKind kind,
            Geometry shape,
            Optional<Quantity<Length>> diameter,
            TradeLength clearance,
            Optional<Quantity<Length>> freeHeight) {}

    /** A door. */
    record Door(String name, LineString at, Optional<Quantity<Length>> adjacentFloorHeight) {}

    /** Where people stand. */
    record Zone(String name, Polygon shape, double weight) {}

    /** The membrane, with its place where the file fixes it. */
    record Membrane(
            Quantity<Length> studPitch,
            Quantity<Length> studDiameter,
            Quantity<Length> height,
            Optional<Point> origin,
            Optional<Quantity<Angle>> angle,
            Optional<Stock> stock) {}

    /** How the membrane is sold. */
    record Stock(boolean roll, Quantity<Length> width, Quantity<Length> length) {}

    /** How cable is to be laid and what may be bought. */
    record Cable(
            TradeLength minSpacing,
            TradeLength maxSpacing,
            Quantity<Length> minBendRadius,
            Point start,
            Quantity<Length> riser,
            Quantity<Length> jointLength,
            Optional<Quantity<Length>> cableHeight,
            boolean floorSensor,
            List<Offer> catalogue) {

        Cable {
            catalogue = List.copyOf(catalogue);
        }
    }

    /** One cable that may be bought. */
    record Offer(
            String name,
            int conductors,
            Quantity<Length> length,
            Quantity<Power> power,
            Quantity<ElectricPotential> voltage,
            Quantity<Length> diameter,
            Quantity<Length> coldLead) {}

    /** The supply and the rules it follows. */
    record Supply(
            Quantity<ElectricPotential> voltage,
            Code code,
            Quantity<Length> feederLength,
            ConductorSize conductor,
            Optional<String> installation,
            Optional<Quantity<Temperature>> ambient) {}

    /** The codes known. */
    enum Code {
        IEC_60364("IEC 60364"),
        BS_7671_2018("BS 7671:2018"),
        NEC_2011("NEC 2011"),
        NEC_2020("NEC 2020"),
        NEC_2023("NEC 2023");

        private final String text;

        Code(String text) {
            this.text = text;
        }

        boolean isAmerican() {
            return text.startsWith("NEC");
        }

        @Override
        public String toString() {
            return text;
        }
    }

    /** A conductor's size, which is no length. */
    sealed interface ConductorSize {
        /** By cross-section. */
        record CrossSection(Quantity<Area> area) implements ConductorSize {}

        /** By gauge: 12 is 12 AWG, 0 is 1/0 AWG, -1 is 2/0 AWG. */
        record Gauge(int number) implements ConductorSize {}
    }

    /** One layer of the build-up. */
    record Layer(
            String name,
            Quantity<Length> thickness,
            Quantity<ThermalConductivity> conductivity,
            Optional<Quantity<Density>> density,
            Optional<Quantity<SpecificHeatCapacity>> heatCapacity,
            boolean heated) {}

    /** The temperatures around. */
    record Climate(
            Quantity<Temperature> air,
            Quantity<Temperature> below,
            Optional<Quantity<Power>> heatLoss,
            Optional<Quantity<Temperature>> surfaceLimit) {}

    /** The tile. */
    record Tile(
            Quantity<Length> length,
            Quantity<Length> width,
            Quantity<Length> thickness,
            Quantity<Length> joint,
            Pattern pattern,
            Quantity<Dimensionless> waste) {}

    /** Laying patterns. */
    enum Pattern {
        STRAIGHT,
        THIRD_OFFSET,
        HALF_OFFSET,
        DIAGONAL
    }

    /** Mortar under and over the membrane. */
    record Bedding(Trowel under, Trowel over, Quantity<Mass> bag) {}

    /** A trowel and the mortar it spreads. */
    record Trowel(
            Notch notch,
            Quantity<Length> width,
            Quantity<Length> depth,
            Quantity<Length> gap,
            Quantity<Angle> angle,
            Quantity<Dimensionless> contact,
            Quantity<Density> density,
            double waterByMass) {}

    /** Forms of a notch. */
    enum Notch {
        SQUARE,
        U,
        V
    }
}
