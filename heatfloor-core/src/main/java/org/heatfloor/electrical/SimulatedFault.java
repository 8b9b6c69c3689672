package org.heatfloor.electrical;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricResistance;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.TemperatureDifference;
import org.heatfloor.quantity.Units;

/** A fault to be simulated, for teaching and for testing the diagnosis. */
public sealed interface SimulatedFault {

    /** A healthy cable. */
    record None() implements SimulatedFault {}

    /**
     * The core is cut through.
     *
     * @param from the first stage at which it is so
     */
    record Cut(TestStage from) implements SimulatedFault {

        /**
         * Checks the stage.
         *
         * @param from the first stage at which it is so
         */
        public Cut {
            Objects.requireNonNull(from, "from");
        }
    }

    /**
     * A nick lets the core touch the screen.
     *
     * @param from the first stage at which it is so
     * @param contact resistance of the contact, not negative
     */
    record Nick(TestStage from, Quantity<ElectricResistance> contact) implements SimulatedFault {

        /**
         * Checks the figure.
         *
         * @param from the first stage at which it is so
         * @param contact resistance of the contact, not negative
         * @throws IllegalArgumentException if the contact resistance is negative
         */
        public Nick {
            Objects.requireNonNull(from, "from");
            Si.notNegative("contact resistance", contact, Units.OHM);
        }
    }

    /**
     * The two conductors of a twin cable touch.
     *
     * @param from the first stage at which it is so
     * @param fraction where, as a share of the length from the cold lead, 0 to 1
     */
    record Shorted(TestStage from, double fraction) implements SimulatedFault {

        /**
         * Checks the figure.
         *
         * @param from the first stage at which it is so
         * @param fraction where, as a share of the length from the cold lead, 0 to 1
         * @throws IllegalArgumentException if the fraction is not 0 to 1
         */
        public Shorted {
            Objects.requireNonNull(from, "from");
            if (!(fraction >= 0 && fraction <= 1)) {
                throw new IllegalArgumentException("short fraction: " + fraction + " was given; 0 to 1 is expected");
            }
        }
    }

    /**
     * The screen has lost its path.
     *
     * @param from the first stage at which it is so
     */
    record BrokenScreen(TestStage from) implements SimulatedFault {

        /**
         * Checks the stage.
         *
         * @param from the first stage at which it is so
         */
        public BrokenScreen {
            Objects.requireNonNull(from, "from");
        }
    }

    /**
     * Another cable than the label says.
     *
     * @param ratio its nominal resistance over the label's, above 0
     */
    record WrongCable(double ratio) implements SimulatedFault {

        /**
         * Checks the figure.
         *
         * @param ratio its nominal resistance over the label's, above 0
         * @throws IllegalArgumentException if the ratio is not above 0 and finite
         */
        public WrongCable {
            if (!(ratio > 0 && ratio < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("wrong cable ratio: " + ratio + " was given; above 0 is expected");
            }
        }
    }

    /**
     * The thermometer reads wrong at one stage.
     *
     * @param at the stage
     * @param offset what it shows too much
     */
    record Thermometer(TestStage at, Quantity<TemperatureDifference> offset) implements SimulatedFault {

        /**
         * Checks the figure.
         *
         * @param at the stage
         * @param offset what it shows too much
         * @throws IllegalArgumentException if the offset is more than 30 K either way
         */
        public Thermometer {
            Objects.requireNonNull(at, "at");
            Si.within("thermometer offset", offset, Units.KELVIN_DIFFERENCE, -30, 30);
        }
    }
}
