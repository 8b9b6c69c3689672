package org.heatfloor.plan;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.heatfloor.electrical.Circuit;
import org.heatfloor.finding.Finding;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.takeoff.TakeOff;

/**
 * The whole result.
 *
 * @param room the room's name
 * @param status whether the job can be done as briefed
 * @param lattice the studs as given or as chosen
 * @param area floor, heatable and heated area
 * @param cables the cables as laid; empty when impossible
 * @param circuits the circuits that feed them
 * @param roomHeat heat into the room, where build-up and climate were given and the job can be done
 * @param takeOff what to buy
 * @param fittingLengths cable lengths that would fit each part of the floor
 * @param options every length of the catalogue for every part of the floor, and what became of it
 * @param findings every judgement, errors first
 */
public record Plan(
        String room,
        Status status,
        StudLattice lattice,
        Areas area,
        List<PlannedCable> cables,
        List<Circuit> circuits,
        Optional<RoomHeat> roomHeat,
        Optional<TakeOff> takeOff,
        List<FittingLengths> fittingLengths,
        List<CableOption> options,
        List<Finding> findings) {

    /**
     * Copies the lists in.
     *
     * @param room the room's name
     * @param status whether the job can be done as briefed
     * @param lattice the studs as given or as chosen
     * @param area floor, heatable and heated area
     * @param cables the cables as laid; empty when impossible
     * @param circuits the circuits that feed them
     * @param roomHeat heat into the room, where build-up and climate were given and the job can be done
     * @param takeOff what to buy
     * @param fittingLengths cable lengths that would fit each part of the floor
     * @param options every length of the catalogue for every part of the floor, and what became of it
     * @param findings every judgement, errors first
     */
    public Plan {
        cables = List.copyOf(cables);
        circuits = List.copyOf(circuits);
        fittingLengths = List.copyOf(fittingLengths);
        options = List.copyOf(options);
        findings = List.copyOf(findings);
    }

    /** Whether the job can be done as briefed. */
    public enum Status {
        /** Every cable is laid exactly and no finding is an error. */
        COMPLETE,
        /** It cannot; the findings say why and what would make it possible. */
        IMPOSSIBLE
    }

    /**
     * The areas of a plan.
     *
     * @param floor inside the walls, columns taken out
     * @param heatable where a cable's centre line may lie
     * @param heated within half the even spacing of a cable
     */
    public record Areas(Quantity<Area> floor, Quantity<Area> heatable, Quantity<Area> heated) {}

    /**
     * Lengths of heating cable that would fit one part of the floor.
     *
     * @param part where the part is
     * @param shortest with the greatest spacing
     * @param longest the proved bound with the least spacing
     */
    public record FittingLengths(String part, Quantity<Length> shortest, Quantity<Length> longest) {}
}
