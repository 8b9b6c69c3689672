package org.heatfloor.plan;

import java.math.BigDecimal;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.thermal.BuildUp;
import org.heatfloor.thermal.Climate;
import org.heatfloor.thermal.EmbeddedCable;
import org.heatfloor.thermal.FloorField;
import org.heatfloor.thermal.HeatUp;
import org.heatfloor.thermal.HeatedWeek;
import org.heatfloor.thermal.SurfaceLaws;

/** When the floor must start, what it takes and what it costs. */
final class FloorTimes {

    private static final Source WEEK = Source.derived("the week of an on/off thermostat on the schedule given");

    private final Brief brief;
    private final BuildUp layers;
    private final Climate climate;
    private final List<CableHeat> cables;
    private final List<EmbeddedCable> embedded;
    private final List<HeatUp> heatUps = new ArrayList<>();

    FloorTimes(Brief brief, BuildUp layers, Climate climate, List<CableHeat> cables, List<EmbeddedCable> embedded) {
        this.brief = brief;
        this.layers = layers;
        this.climate = climate;
        this.cables = cables;
        this.embedded = embedded;
        for (int i = 0; i < cables.size(); i++) {
            heatUps.add(HeatUp.fromCold(layers, climate, SurfaceLaws.floorCurve(), embedded.get(i), spacing(i)));
        }
    }

    private Quantity<Length> spacing(int i) {
        return Amounts.metres(Si.in("power", embedded.get(i).power(), Units.WATT_PER_METRE)
                / Si.in("density", cables.get(i).powerDensity(), Units.WATT_PER_SQUARE_METRE));
    }

    /** Until every cable's floor has 90 % of its rise. */
    Optional<Quantity<Time>> toNineTenths() {
        return slowest(h -> h.timeToShare(Amounts.of(0.9, Units.ONE)));
    }

    private Optional<Quantity<Time>> slowest(Function<HeatUp, Optional<Quantity<Time>>> time) {
        double seconds = 0;
        for (HeatUp heatUp : heatUps) {
            Optional<Quantity<Time>> found = time.apply(heatUp);
            if (found.isEmpty()) {
                return Optional.empty();
            }
            seconds = Math.max(seconds, Si.in("time", found.orElseThrow(), Units.SECOND));
        }
        return Optional.of(Amounts.seconds(seconds));
    }

    FloorUse use(FloorField field) {
        List<HeatedWeek> weeks = new ArrayList<>();
        double weekly = 0;
        if (brief.heat.schedule.isPresent()) {
            for (int i = 0; i < cables.size(); i++) {
                HeatedWeek week = brief.heat.thermostat.run(
                        layers,
                        climate,
                        SurfaceLaws.floorCurve(),
                        embedded.get(i),
                        spacing(i),
                        brief.heat.schedule.orElseThrow());
                weeks.add(week);
                weekly += Si.in("energy", week.energy(cables.get(i).heatedArea()), Units.KILOWATT_HOUR);
            }
        }
        Optional<Quantity<Energy>> perWeek =
                weeks.isEmpty() ? Optional.empty() : Optional.of(Amounts.of(weekly, Units.KILOWATT_HOUR));
        double share =
                Si.in("into the room", field.intoRoom(), Units.WATT) / Si.in("supplied", field.supplied(), Units.WATT);
        Optional<Quantity<Energy>> perSeason = brief.heat
                .season
                .filter(s -> share > 0)
                .map(s -> s.degreeHours().electricity(s.loss(), Amounts.of(Math.min(1, share), Units.ONE)));
        return new FloorUse(
                brief.heat.floorTemperature.flatMap(t -> slowest(h -> h.timeTo(t))),
                weeks.stream().max(Comparator.comparingDouble(w -> Si.in("lead", w.longestLead(), Units.MINUTE))),
                perWeek,
                perWeek.flatMap(e -> brief.heat.tariff.map(t -> t.cost(e))),
                perSeason,
                perSeason.flatMap(e -> brief.heat.tariff.map(t -> t.cost(e))),
                brief.heat.tariff);
    }

    List<Finding> findings(FloorUse use) {
        List<Finding> out = new ArrayList<>();
        brief.heat.floorTemperature.ifPresent(wanted -> {
            String warm = QuantityText.write(wanted.to(Units.CELSIUS), 1);
            out.add(use.timeToWanted()
                    .map(t -> Finding.withValue(
                            Severity.NOTE,
                            "heat-up",
                            "From layers at room temperature the floor is at " + warm + " on average after "
                                    + minutes(t) + ".",
                            t,
                            Source.derived("layers in one dimension")))
                    .orElseGet(() -> Finding.of(
                            Severity.WARNING,
                            "heat-up",
                            "Full power never brings the floor to the " + warm
                                    + " wanted: ask for less or take more power a square metre.",
                            Source.derived("layers in one dimension"))));
        });
        use.week().ifPresent(week -> {
            out.addAll(week.findings("schedule"));
            week.warmings().stream()
                    .filter(HeatedWeek.Warming::reached)
                    .max(Comparator.comparingDouble(w -> Si.in("lead", w.lead(), Units.MINUTE)))
                    .ifPresent(w -> out.add(Finding.withValue(
                            Severity.NOTE,
                            "schedule",
                            "To read " + QuantityText.write(w.wanted().to(Units.CELSIUS), 1) + " at its sensor on "
                                    + w.day().getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " " + w.from()
                                    + " the floor starts " + minutes(w.lead())
                                    + " ahead, the longest lead of the week.",
                            w.lead(),
                            WEEK)));
        });
        use.energyPerWeek()
                .ifPresent(e -> out.add(energy(
                        "schedule",
                        "A week on the schedule, room and climate held at their design temperatures, takes ",
                        e,
                        use.costPerWeek().map(this::money),
                        WEEK)));
        use.energyPerSeason()
                .ifPresent(e -> out.add(energy(
                        "season",
                        "To give all the room's heat of the season the floor takes ",
                        e,
                        use.costPerSeason().map(this::money),
                        Source.derived("degree hours over the share of the heat that goes up"))));
        return out;
    }

    private String money(BigDecimal cost) {
        return cost.toPlainString()
                + brief.heat
                        .tariff
                        .map(t -> " " + t.currency().getCurrencyCode())
                        .orElse("");
    }

    private static Finding energy(
            String subject, String words, Quantity<Energy> energy, Optional<String> cost, Source source) {
        return Finding.withValue(
                Severity.NOTE,
                subject,
                words + QuantityText.write(energy, 1) + cost.map(c -> ", " + c).orElse("") + ".",
                energy,
                source);
    }

    private static String minutes(Quantity<Time> time) {
        return QuantityText.write(time.to(Units.MINUTE), 0);
    }
}
