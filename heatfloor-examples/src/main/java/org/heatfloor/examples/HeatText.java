package org.heatfloor.examples;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.heatfloor.plan.CableHeat;
import org.heatfloor.plan.FloorUse;
import org.heatfloor.plan.PlannedCable;
import org.heatfloor.plan.RoomHeat;
import org.heatfloor.quantity.Units;
import org.heatfloor.thermal.SurfaceSummary;

/** The lines of the summary that tell of heat; every temperature is that of the floor as laid at steady full power. */
final class HeatText {

    private final UserUnits units;

    HeatText(UserUnits units) {
        this.units = units;
    }

    /** One cable: power, the floor it heats, its sensor. */
    String cable(PlannedCable cable, CableHeat heat, Optional<RoomHeat> room) {
        SurfaceSummary floor = heat.asLaid();
        String sensor = room.stream()
                .flatMap(r -> r.floor().sensors().stream())
                .filter(s -> s.cable().equals(cable.name()))
                .map(s -> "; sensor reads " + units.temperature(s.reading().reading()))
                .findFirst()
                .orElse("");
        return cable.name() + ": " + units.flux(heat.powerDensity()) + "; surface as laid "
                + units.temperature(floor.mean()) + " mean, " + units.temperature(floor.min()) + " to "
                + units.temperature(floor.max()) + sensor;
    }

    String room(RoomHeat heat) {
        String output = UserUnits.written(heat.heatOutput(), Units.WATT, 0) + " into the room";
        String loss = heat.heatLoss()
                .map(l -> (heat.coversHeatLoss() ? ", covers" : ", does not cover") + " the heat loss of "
                        + UserUnits.written(l, Units.WATT, 0))
                .orElse("");
        String time = heat.heatUpTime()
                .map(t -> "; " + UserUnits.time(t) + " from room temperature to 90 % of the rise")
                .orElse("");
        return output + loss + time;
    }

    /** Seals, start, energy and cost; empty when there is nothing of it. */
    String use(RoomHeat heat) {
        List<String> parts = new ArrayList<>();
        if (!heat.floor().seals().isEmpty()) {
            parts.add("seal "
                    + heat.floor().seals().stream()
                            .map(s -> s.keepOut() + " " + units.temperature(s.warmest()))
                            .collect(Collectors.joining(", ")));
        }
        FloorUse use = heat.use();
        use.timeToWanted().ifPresent(t -> parts.add(UserUnits.time(t) + " to the floor temperature wanted"));
        use.week().ifPresent(w -> parts.add("starts up to " + UserUnits.time(w.longestLead()) + " ahead"));
        use.energyPerWeek()
                .ifPresent(e -> parts.add(
                        UserUnits.written(e, Units.KILOWATT_HOUR, 1) + " a week" + money(use, use.costPerWeek())));
        use.energyPerSeason()
                .ifPresent(e -> parts.add(
                        UserUnits.written(e, Units.KILOWATT_HOUR, 0) + " a season" + money(use, use.costPerSeason())));
        return String.join("; ", parts);
    }

    private static String money(FloorUse use, Optional<BigDecimal> cost) {
        return cost.map(c -> " (" + c.toPlainString()
                        + use.tariff()
                                .map(t -> " " + t.currency().getCurrencyCode())
                                .orElse("") + ")")
                .orElse("");
    }
}
