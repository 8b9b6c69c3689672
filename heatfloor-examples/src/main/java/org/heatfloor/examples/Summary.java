package org.heatfloor.examples;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.quantity.ElectricResistance;
import org.heatfloor.electrical.Band;
import org.heatfloor.electrical.Circuit;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.plan.Plan;
import org.heatfloor.plan.PlannedCable;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Units;
import org.heatfloor.takeoff.MortarNeed;
import org.heatfloor.takeoff.TakeOff;

/** One screen a person can act on: what to buy, how it is laid, circuit, heat, floor, and what to decide first. */
final class Summary {

    static final int LINES = 24;
    static final int COLUMNS = 100;
    private static final int HEAD = 9;
    private static final String SAFETY =
            "a licensed electrician connects it; prove dead; no mains on the reel; never cover untested";

    private final Plan plan;
    private final List<Finding> findings;
    private final UserUnits units;
    private final HeatText heat;
    private final Set<String> cables;
    private final List<String> lines = new ArrayList<>();

    private Summary(Plan plan, List<Finding> findings, RoomFile file) {
        this.plan = plan;
        this.cables = file.cable().catalogue().stream().map(HeatingCable::name).collect(Collectors.toSet());
        this.findings = findings.stream()
                .sorted(Comparator.comparing(Finding::severity).thenComparing(f -> !choice(f)))
                .toList();
        this.units = new UserUnits(file.coordinateUnit());
        this.heat = new HeatText(units);
    }

    static List<String> of(Plan plan, List<Finding> findings, RoomFile file) {
        Summary summary = new Summary(plan, findings, file);
        summary.write();
        return List.copyOf(summary.lines);
    }

    /** Whether a finding tells of a cable, taken or not, which a reader asks for before anything else. */
    private boolean choice(Finding finding) {
        return cables.contains(finding.subject());
    }

    /** The status with the cables and their load, for a title. */
    static String headline(Plan plan, LengthUnit unit) {
        String status = plan.status().name().toLowerCase(Locale.ROOT);
        if (plan.cables().isEmpty()) {
            UserUnits units = new UserUnits(unit);
            return status + ": no cable of the catalogue can be laid here as asked"
                    + plan.fittingLengths().stream()
                            .map(f -> "; " + units.longLength(f.shortest()) + " to " + units.longLength(f.longest())
                                    + " would fit the " + f.part())
                            .collect(Collectors.joining());
        }
        double watts = plan.cables().stream()
                .mapToDouble(c ->
                        c.rating().power().nominal().to(Units.WATT).getValue().doubleValue())
                .sum();
        return status + ": "
                + plan.cables().stream().map(PlannedCable::name).collect(Collectors.joining(", ")) + "; "
                + QuantityText.number(watts, 0) + " W";
    }

    private void write() {
        lines.add(plan.room() + ": " + plan.status().name().toLowerCase(Locale.ROOT));
        plan.cables()
                .forEach(c -> line(
                        "Buy",
                        "heating cable " + c.name() + ": "
                                + units.longLength(c.cable().length()) + ", "
                                + UserUnits.written(c.cable().power(), Units.WATT, 0) + " at "
                                + UserUnits.written(c.cable().voltage(), Units.VOLT, 0) + ", cold lead "
                                + units.longLength(c.cable().coldLead()) + "; reads "
                                + ohms(c.rating().resistance())));
        plan.takeOff().ifPresent(this::takeOff);
        plan.cables().forEach(this::laying);
        plan.circuits().forEach(this::circuit);
        plan.cables().forEach(c -> c.heat().ifPresent(h -> line("Heat", heat.cable(c, h, plan.roomHeat()))));
        plan.roomHeat().ifPresent(room -> {
            line("", heat.room(room));
            line("", heat.use(room));
        });
        plan.takeOff().ifPresent(this::heights);
        for (Plan.FittingLengths fits : plan.fittingLengths()) {
            if (plan.status() == Plan.Status.IMPOSSIBLE) {
                line(
                        "Fits",
                        "one cable of " + units.longLength(fits.shortest()) + " to " + units.longLength(fits.longest())
                                + " (" + fits.part() + ")");
            }
        }
        if (!plan.circuits().isEmpty()) {
            line("Safety", SAFETY);
        }
        judgements();
    }

    /** What the meter shows of a sound core out of the box. */
    private String ohms(Band<ElectricResistance> accepted) {
        return UserUnits.written(accepted.low(), Units.OHM, 1) + " to "
                + UserUnits.written(accepted.high(), Units.OHM, 1) + " at " + units.temperature(Amounts.celsius(20));
    }

    private void takeOff(TakeOff takeOff) {
        List<String> parts = new ArrayList<>();
        parts.add(takeOff.membraneCut()
                .map(cut -> cut.stockCount() + " membrane "
                        + cut.stock().kind().name().toLowerCase(Locale.ROOT) + (cut.stockCount() == 1 ? "" : "s")
                        + " (" + cut.pieces().size() + " pieces, " + units.area(takeOff.membraneArea()) + ")")
                .orElse(units.area(takeOff.membraneArea()) + " of membrane"));
        for (MortarNeed need : takeOff.mortars()) {
            parts.add(need.bags() + (need.bags() == 1 ? " bag" : " bags") + " of mortar " + need.use());
        }
        takeOff.layout().ifPresent(layout -> parts.add(layout.tilesToBuy() + " tiles"));
        takeOff.grout().ifPresent(grout -> parts.add(units.mass(grout.mass()) + " of grout"));
        line("", String.join(", ", parts));
    }

    private void laying(PlannedCable cable) {
        String sensor = cable.sensor()
                .map(s -> "; sensor midway between two runs, see the drawing")
                .orElse("");
        line(
                "Lay",
                cable.name() + ": " + units.longLength(cable.route().laidLength()) + " at "
                        + units.shortLength(cable.route().evenSpacing()) + " on average, "
                        + cable.route().turns() + " right-angle turns, "
                        + units.shortLength(
                                cable.cable().length().subtract(cable.route().laidLength()))
                        + " left over" + sensor);
    }

    private void circuit(Circuit circuit) {
        String device = circuit.protectiveDevice()
                .map(d -> UserUnits.written(d, Units.AMPERE, 0) + " protective device")
                .orElse("no protective device of the code fits");
        line(
                "Circuit",
                String.join(" + ", circuit.cables()) + ": " + UserUnits.written(circuit.current(), Units.AMPERE, 2)
                        + ", " + device + ", residual current "
                        + UserUnits.written(circuit.residualCurrentDevice(), Units.MILLIAMPERE, 0) + ", conductor "
                        + circuit.conductor() + ", voltage drop "
                        + UserUnits.written(circuit.voltageDropShare(), Units.PERCENT, 2));
    }

    private void heights(TakeOff takeOff) {
        if (takeOff.height().isEmpty()) {
            return;
        }
        String steps = takeOff.doorSteps().stream()
                .map(s -> "; " + s.door() + " " + signed(units.thickness(s.step())))
                .collect(Collectors.joining());
        line("Height", units.thickness(takeOff.height().get().total()) + " above the structural floor" + steps);
    }

    private static String signed(String length) {
        return length.startsWith("-") || length.startsWith("0 ") ? length : "+" + length;
    }

    /** As many findings as the screen holds, the grave ones first; the last line tells how many there are. */
    private void judgements() {
        int shown = 0;
        for (Finding finding : findings) {
            int before = lines.size();
            line(finding.severity().name().toLowerCase(Locale.ROOT), finding.subject() + ": " + finding.message());
            if (lines.size() > LINES - 1) {
                lines.subList(before, lines.size()).clear();
                break;
            }
            shown++;
        }
        String counts = count(Severity.ERROR, "error") + ", " + count(Severity.WARNING, "warning") + ", "
                + count(Severity.NOTE, "note");
        line("", counts + (shown < findings.size() ? "; all of them stand in plan.json" : ""));
    }

    private String count(Severity severity, String word) {
        long count = findings.stream().filter(f -> f.severity() == severity).count();
        return count + " " + word + (count == 1 ? "" : "s");
    }

    private void line(String head, String text) {
        if (text.isEmpty()) {
            return;
        }
        List<String> wrapped = TextLines.wrapped(text, COLUMNS - HEAD);
        for (int i = 0; i < wrapped.size(); i++) {
            String first = i == 0 ? head : "";
            lines.add(Fault.printable(first + " ".repeat(Math.max(0, HEAD - first.length())) + wrapped.get(i)));
        }
    }
}
