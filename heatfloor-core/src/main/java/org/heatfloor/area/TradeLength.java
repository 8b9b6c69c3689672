package org.heatfloor.area;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * A clearance or spacing as the trade states it: a length, or a count of stud pitches that becomes a length once the
 * membrane is known.
 */
public sealed interface TradeLength {

    /**
     * A plain length.
     *
     * @param length the length, not negative
     * @return the clearance or spacing
     * @throws IllegalArgumentException if it is negative or not a length
     */
    static TradeLength of(Quantity<Length> length) {
        return new Plain(Amounts.metres(Si.notNegative("length", length, Units.METRE)));
    }

    /**
     * A count of studs.
     *
     * @param count stud pitches, 0 to 1000
     * @return the clearance or spacing
     * @throws IllegalArgumentException if the count is out of range
     */
    static TradeLength studs(double count) {
        return new Studs(count);
    }

    /**
     * The length for a membrane's stud pitch.
     *
     * @param studPitch the pitch, greater than zero
     * @return the length
     * @throws IllegalArgumentException if the pitch is not greater than zero
     */
    Quantity<Length> with(Quantity<Length> studPitch);

    /**
     * A plain length.
     *
     * @param length the length
     */
    record Plain(Quantity<Length> length) implements TradeLength {
        @Override
        public Quantity<Length> with(Quantity<Length> studPitch) {
            Si.positive("stud pitch", studPitch, Units.METRE);
            return length;
        }

        @Override
        public String toString() {
            return QuantityText.write(length.to(Units.MILLIMETRE), 1);
        }
    }

    /**
     * A count of stud pitches.
     *
     * @param count the count
     */
    record Studs(double count) implements TradeLength {

        /**
         * Checks the count.
         *
         * @param count the count
         * @throws IllegalArgumentException if it is not between 0 and 1000
         */
        public Studs {
            if (!(count >= 0 && count <= 1000)) {
                throw new IllegalArgumentException("studs: " + count + " was given; 0 to 1000 is expected");
            }
        }

        @Override
        public Quantity<Length> with(Quantity<Length> studPitch) {
            return Amounts.metres(count * Si.positive("stud pitch", studPitch, Units.METRE));
        }

        @Override
        public String toString() {
            return QuantityText.number(count, 2) + " studs";
        }
    }
}
