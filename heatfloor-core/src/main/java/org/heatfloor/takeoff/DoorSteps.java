package org.heatfloor.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.area.Door;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Steps at doors and what would make them flush. */
final class DoorSteps {

    /** Square notches as commonly sold, width, depth and gap alike (common practice, no source). */
    private static final double[] METRIC_NOTCHES_MM = {4, 6, 8, 10, 12};

    private static final String[] US_NOTCHES = {"3/16", "1/4", "5/16", "3/8", "1/2"};

    /** Least embedded bed, 3/32 in: ANSI A108.5, 2.2.2. */
    static final double LEAST_BED_METRES = 3.0 / 32 * 0.0254;

    /** Thickest bed of the larger-tile mortars, 1/2 in embedded: ANSI A118.1, A118.4 and A118.15, suffix H. */
    static final double THICKEST_BED_METRES = 0.5 * 0.0254;

    private static final double THINNEST_TILE_METRES = 0.006;
    private static final double THINNEST_MEMBRANE_METRES = 0.003;

    private final FloorHeight height;
    private final Bedding bedding;
    private final StepRule rule;
    private final PurchaseUnits units;

    DoorSteps(FloorHeight height, Bedding bedding, StepRule rule, PurchaseUnits units) {
        this.height = height;
        this.bedding = bedding;
        this.rule = rule;
        this.units = units;
    }

    /** The steps; a floor that is levelled first comes higher by the compound at each door. */
    List<DoorStep> of(List<Door> doors, ToDoubleFunction<Door> levellerMetres) {
        List<DoorStep> steps = new ArrayList<>();
        for (Door door : doors) {
            door.adjacentFloorHeight().ifPresent(beyond -> {
                double leveller = levellerMetres.applyAsDouble(door);
                double step = height.totalMetres() + leveller - Si.in("floor beyond", beyond, Units.METRE);
                var amount = Amounts.millimetres(step * 1000);
                StepVerdict verdict = rule.verdict(amount);
                List<Remedy> remedies = verdict == StepVerdict.FLUSH ? List.of() : remedies(step);
                steps.add(new DoorStep(
                        door.name(),
                        amount,
                        Amounts.metres(leveller),
                        verdict,
                        rule.run(amount),
                        rule.source(verdict),
                        remedies));
            });
        }
        return steps;
    }

    private List<Remedy> remedies(double step) {
        List<Remedy> remedies = new ArrayList<>();
        trowels(remedies, "under the membrane", step, bedding.lowerVolumeMetres(), bedding.trowelUnder());
        trowels(remedies, "over the membrane", step, bedding.upperVolumeMetres(), bedding.trowelOver());
        remedies.removeIf(r -> rule.verdict(r.step()) != StepVerdict.FLUSH);
        remedies.sort(Comparator.comparingDouble(r -> Math.abs(Si.in("step", r.step(), Units.METRE))));
        double upright = Si.in("upright", rule.upright(), Units.METRE);
        double over = step > 0 ? step - upright : step + upright;
        other(remedies, "tile", over, Si.in("tile", height.tile(), Units.METRE), THINNEST_TILE_METRES, step);
        other(
                remedies,
                "membrane",
                over,
                Si.in("membrane", height.membrane(), Units.METRE),
                THINNEST_MEMBRANE_METRES,
                step);
        remedies.add(new Remedy(
                step > 0
                        ? "raise the floor beyond, or lower the structural floor here, by " + text(step, units)
                        : "level the structural floor up by " + text(-step, units),
                Amounts.millimetres(0)));
        return remedies;
    }

    private void trowels(List<Remedy> remedies, String where, double step, double volume, Trowel now) {
        if (units == PurchaseUnits.METRIC) {
            for (double notch : METRIC_NOTCHES_MM) {
                String name = String.format(Locale.ROOT, "%.0f mm", notch);
                trowel(remedies, where, step, volume, now, Amounts.millimetres(notch), name);
            }
        } else {
            for (String notch : US_NOTCHES) {
                String name = notch + " in";
                trowel(remedies, where, step, volume, now, QuantityText.read(name, Units.INCH), name);
            }
        }
    }

    private void trowel(
            List<Remedy> remedies,
            String where,
            double step,
            double volume,
            Trowel now,
            Quantity<Length> notch,
            String name) {
        double contact = Bedding.contactShare(bedding.contact());
        Trowel trowel = new Trowel(Notch.SQUARE, notch, notch, notch, now.angle());
        double bed = (volume - now.combedMetres() + trowel.combedMetres()) / contact;
        if (bed >= LEAST_BED_METRES && bed <= THICKEST_BED_METRES) {
            double left = step + bed - volume / contact;
            remedies.add(new Remedy(
                    "comb the bed " + where + " with a square " + name + " trowel", Amounts.millimetres(left * 1000)));
        }
    }

    /**
     * Another thickness of tile or membrane that brings the step down to what may stand upright, rounded to the tenth of a
     * millimetre or hundredth of an inch that keeps it so.
     */
    private void other(List<Remedy> remedies, String what, double over, double now, double least, double step) {
        double grain = units == PurchaseUnits.METRIC ? 1e-4 : 0.0254 / 100;
        double grains = (now - over) / grain;
        double wanted = (over > 0 ? Math.floor(grains + 1e-6) : Math.ceil(grains - 1e-6)) * grain;
        if (wanted >= least) {
            remedies.add(new Remedy(
                    "use a " + what + " " + text(wanted, units) + (over > 0 ? " thick or less" : " thick or more")
                            + " instead of " + text(now, units),
                    Amounts.millimetres((step + wanted - now) * 1000)));
        }
    }

    private static String text(double metres, PurchaseUnits units) {
        return units.thicknessText(Amounts.metres(metres));
    }

    static List<Finding> findings(List<DoorStep> steps, StepRule rule, PurchaseUnits units) {
        List<Finding> findings = new ArrayList<>();
        for (DoorStep step : steps) {
            Severity severity = step.verdict() == StepVerdict.FLUSH ? Severity.NOTE : Severity.WARNING;
            String way = Si.in("step", step.step(), Units.METRE) >= 0 ? "higher" : "lower";
            double rise = Math.abs(Si.in("step", step.step(), Units.METRE));
            String first = step.remedies().isEmpty()
                    ? ""
                    : "; to make it flush: " + step.remedies().get(0).change();
            String message = "the floor comes " + text(rise, units) + " " + way + " than the floor beyond: "
                    + asked(step, units) + levelled(step, units) + first;
            findings.add(Finding.of(
                    severity,
                    "door '" + step.door() + "'",
                    message,
                    Amounts.millimetres(rise * 1000),
                    limit(step.verdict(), rule),
                    step.source()));
        }
        return findings;
    }

    private static String levelled(DoorStep step, PurchaseUnits units) {
        double leveller = Si.in("leveller", step.leveller(), Units.METRE);
        return leveller > 0 ? ", " + text(leveller, units) + " of levelling compound counted" : "";
    }

    private static String asked(DoorStep step, PurchaseUnits units) {
        String run = units.thicknessText(step.run());
        return switch (step.verdict()) {
            case FLUSH -> "it may stand upright";
            case BEVEL -> "bevel it over " + run;
            case RAMP -> "ramp it over " + run;
            case TOO_HIGH -> "more than a door may have";
        };
    }

    private static Quantity<Length> limit(StepVerdict verdict, StepRule rule) {
        return switch (verdict) {
            case FLUSH -> rule.upright();
            case BEVEL -> rule.bevelled();
            case RAMP, TOO_HIGH -> rule.ramped();
        };
    }
}
