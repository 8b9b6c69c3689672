package org.heatfloor.electrical;

import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Which protective device serves a load on a conductor, in amperes. */
final class CircuitSizing {

    private static final double SLACK = 1 + 1e-9;

    private CircuitSizing() {}

    /** The greatest load the conductor and the standard ratings allow on one circuit; 0 if no device protects it. */
    static double capacity(ElectricalCode code, Ampacity ampacity, boolean severalCables) {
        double greatest = greatestDevice(code, ampacity, severalCables);
        if (!(greatest >= leastDevice(code))) {
            return 0;
        }
        double allowance = code.limit(RuleTopic.CONTINUOUS_LOAD_CONDUCTOR, Units.ONE);
        double inPlace = amperes(ampacity.usable()) / (code.allowanceOnConductorInPlace() ? allowance : 1);
        return Math.min(
                greatest / code.limit(RuleTopic.CONTINUOUS_LOAD_DEVICE, Units.ONE),
                Math.min(amperes(ampacity.terminalLimit()) / allowance, inPlace));
    }

    /** The least standard rating for a load, empty if the conductor cannot carry the load behind any. */
    static OptionalDouble device(ElectricalCode code, Ampacity ampacity, double load, boolean severalCables) {
        if (!(load <= capacity(code, ampacity, severalCables) * SLACK)) {
            return OptionalDouble.empty();
        }
        double design = load * code.limit(RuleTopic.CONTINUOUS_LOAD_DEVICE, Units.ONE);
        OptionalDouble rating = code.roundedUp(Math.max(design, leastDevice(code)));
        return rating.isPresent() && rating.getAsDouble() <= greatestDevice(code, ampacity, severalCables) * SLACK
                ? rating
                : OptionalDouble.empty();
    }

    static double greatestDevice(ElectricalCode code, Ampacity ampacity, boolean severalCables) {
        double greatest = ampacity.greatestDevice().map(CircuitSizing::amperes).orElse(0.0);
        Optional<CodeRule> several = code.rule(RuleTopic.SEVERAL_OUTLETS);
        return severalCables && several.isPresent()
                ? Math.min(greatest, code.limit(RuleTopic.SEVERAL_OUTLETS, Units.AMPERE))
                : greatest;
    }

    private static double leastDevice(ElectricalCode code) {
        return code.rule(RuleTopic.LEAST_DEVICE).isPresent() ? code.limit(RuleTopic.LEAST_DEVICE, Units.AMPERE) : 0;
    }

    static double amperes(Quantity<ElectricCurrent> current) {
        return Si.in("current", current, Units.AMPERE);
    }
}
