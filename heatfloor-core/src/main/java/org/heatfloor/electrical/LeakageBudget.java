package org.heatfloor.electrical;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.LinearCapacitance;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * The standing leakage of healthy cables through the capacitance of core to screen, {@code I = 2π·f·C·U}, against what a
 * residual current device bears without nuisance trips. The supply voltage is taken as the voltage to earth, which is the
 * worst case; on a 120/240 V supply each conductor has 120 V to earth and the two charging currents oppose. In a
 * single-conductor cable the voltage falls evenly along the run, so half of it counts.
 *
 * @param current standing leakage of all the cables
 * @param limit what is accepted behind one residual current device
 * @param greatestLength cable of this kind (twin-conductor) that one device bears
 * @param findings the judgement
 */
public record LeakageBudget(
        Quantity<ElectricCurrent> current,
        Quantity<ElectricCurrent> limit,
        Quantity<Length> greatestLength,
        List<Finding> findings) {

    /** Order of magnitude of a screened heating cable's capacitance, 100 to 300 pF/m; from memory. */
    public static final Band<LinearCapacitance> USUAL_CAPACITANCE = Band.of(100, 200, 300, Units.PICOFARAD_PER_METRE);

    private static final double CLASS_A_NON_TRIP_AMPERES = 4e-3;
    private static final double SHARE = 0.3;
    private static final double SLACK = 1e-9;

    /**
     * Copies the list.
     *
     * @param current standing leakage of all the cables
     * @param limit what is accepted behind one residual current device
     * @param greatestLength cable of this kind (twin-conductor) that one device bears
     * @param findings the judgement
     */
    public LeakageBudget {
        Objects.requireNonNull(current, "current");
        Objects.requireNonNull(limit, "limit");
        Objects.requireNonNull(greatestLength, "greatestLength");
        findings = List.copyOf(findings);
    }

    /**
     * The budget of cables behind one residual current device.
     *
     * @param supply the supply
     * @param cables the cables
     * @param capacitance capacitance of core to screen per length, above 0
     * @return the budget
     * @throws IllegalArgumentException if there is no cable or the capacitance is not above 0
     */
    public static LeakageBudget of(Supply supply, List<HeatingCable> cables, Quantity<LinearCapacitance> capacitance) {
        if (cables.isEmpty()) {
            throw new IllegalArgumentException("cables: none was given; one or more is expected");
        }
        ElectricalCode code = supply.code();
        double perMetre = Si.positive("capacitance", capacitance, Units.FARAD_PER_METRE);
        double amperesPerMetre = Leakage.amperes(code.hertz(), perMetre, supply.volts());
        double amperes = cables.stream()
                .mapToDouble(cable -> cable.metres() * amperesPerMetre * (cable.conductors() == 1 ? 0.5 : 1))
                .sum();
        Optional<CodeRule> rule = code.rule(RuleTopic.LEAKAGE_SHARE);
        double limit = rule.isPresent()
                ? code.limit(RuleTopic.LEAKAGE_SHARE, Units.ONE) * code.limit(RuleTopic.RESIDUAL_CURRENT, Units.AMPERE)
                : SHARE * CLASS_A_NON_TRIP_AMPERES;
        Source source = rule.map(CodeRule::source)
                .orElseGet(() -> Source.commonPractice(code + " has no rule; 30 % of the 4 mA a Class A device bears"));
        boolean kept = amperes <= limit * (1 + SLACK);
        Finding finding = Finding.of(
                kept ? Severity.NOTE : Severity.WARNING,
                "leakage",
                kept
                        ? "standing leakage keeps within what the residual current device bears"
                        : "standing leakage may trip the residual current device without a fault: share the cables over"
                                + " more devices, " + QuantityText.number(limit / amperesPerMetre, 0)
                                + " m of twin cable at most behind one",
                Amounts.of(amperes * 1000, Units.MILLIAMPERE),
                Amounts.of(limit * 1000, Units.MILLIAMPERE),
                source);
        return new LeakageBudget(
                Amounts.of(amperes * 1000, Units.MILLIAMPERE),
                Amounts.of(limit * 1000, Units.MILLIAMPERE),
                Amounts.metres(limit / amperesPerMetre),
                List.of(finding));
    }

    /**
     * The longest a Class A ground-fault circuit interrupter may take, {@code T = (20 mA/I)^1.43} seconds (UL 943).
     *
     * @param faultCurrent the residual current, 6 mA to 264 mA
     * @return the trip time
     * @throws IllegalArgumentException if the current is out of the formula's range
     */
    public static Quantity<Time> classATripTime(Quantity<ElectricCurrent> faultCurrent) {
        double milliamperes = Si.within("fault current", faultCurrent, Units.MILLIAMPERE, 6, 264);
        return Amounts.seconds(Leakage.classASeconds(milliamperes));
    }
}
