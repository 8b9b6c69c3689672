package org.heatfloor.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.area.HeatableArea;
import org.heatfloor.area.KeepOut;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.plan.Plan;
import org.heatfloor.plan.PlannedCable;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.SensorPlace;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.operation.buffer.BufferOp;

/** From a room file and its plan to what the drawing shows. */
final class PlanSheets {

    private static final int ROUND = 24;

    private PlanSheets() {}

    static PlanSheet of(RoomFile file, Plan plan) {
        List<PlanSheet.Run> runs = new ArrayList<>();
        for (PlannedCable cable : plan.cables()) {
            runs.add(run(cable, file.coordinateUnit()));
        }
        return of(file, plan.lattice(), Summary.headline(plan, file.coordinateUnit()), runs);
    }

    /** The room with given runs of cable. */
    static PlanSheet of(RoomFile file, StudLattice lattice, String status, List<PlanSheet.Run> runs) {
        Geometry free = HeatableArea.of(
                        file.room(),
                        Briefs.wallClearance(file),
                        List.of(),
                        file.membrane().studPitch())
                .region();
        return new PlanSheet(
                file.name(),
                status,
                file.coordinateUnit(),
                file.room().polygon(),
                Optional.of(free.getBoundary()),
                file.keepOuts().stream().map(k -> fixture(file, k)).toList(),
                file.priorityZones().stream()
                        .map(z -> new PlanSheet.Area(z.name(), z.shape()))
                        .toList(),
                file.doors().stream()
                        .map(d -> new PlanSheet.Opening(d.name(), d.at()))
                        .toList(),
                Optional.of(lattice),
                file.room().onWall("start", file.cable().start(), Units.METRE),
                runs);
    }

    private static PlanSheet.Fixture fixture(RoomFile file, KeepOut keepOut) {
        double radius = metres(keepOut.radius());
        double clearance = metres(keepOut.clearance().with(file.membrane().studPitch()));
        Geometry shape = keepOut.shape();
        Geometry drawn = radius > 0 ? BufferOp.bufferOp(shape, radius, ROUND) : shape;
        Geometry kept = keepOut.blocksCable() ? BufferOp.bufferOp(shape, radius + clearance, ROUND) : drawn;
        return new PlanSheet.Fixture(keepOut.name(), drawn, kept);
    }

    private static double metres(Quantity<Length> length) {
        return length.to(Units.METRE).getValue().doubleValue();
    }

    private static PlanSheet.Run run(PlannedCable cable, LengthUnit unit) {
        LineString line = cable.route().line();
        List<Point> joints = new ArrayList<>(List.of(line.getStartPoint()));
        boolean comesBack = cable.cable().conductors() == 1;
        if (comesBack) {
            joints.add(line.getEndPoint());
        }
        UserUnits units = new UserUnits(unit);
        String remark = "laid " + units.cableLength(cable.route().laidLength()) + " of "
                + units.cableLength(cable.cable().length()) + ", mean spacing "
                + units.shortLength(cable.route().evenSpacing());
        return new PlanSheet.Run(
                cable.name(),
                remark,
                line,
                cable.route().coldLeads(),
                joints,
                !comesBack,
                cable.sensor().map(PlanSheets::sensor),
                cable.spareSensor().map(PlanSheets::sensor));
    }

    private static PlanSheet.Sensor sensor(SensorPlace place) {
        return new PlanSheet.Sensor(place.at(), place.lead());
    }
}
