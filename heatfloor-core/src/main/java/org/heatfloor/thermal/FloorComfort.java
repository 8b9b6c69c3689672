package org.heatfloor.thermal;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Discomfort from a warm or cool floor for people in light indoor shoes. */
public final class FloorComfort {

    private static final Source SOURCE = Source.fromMemory(
            "ISO 7730:2005, 6.4, percentage dissatisfied by the floor; formula seen in a secondary text");

    /** Where the formula has its minimum, °C. */
    private static final double LEAST_DISSATISFIED = 23.6;

    private static final double COLDEST = 5;
    private static final double HOTTEST = 40;

    private FloorComfort() {}

    /**
     * Percentage dissatisfied, {@code PD = 100 − 94·exp(−1.387 + 0.118·t − 0.0025·t²)} with {@code t} in °C (from
     * memory: ISO 7730:2005, 6.4). Least near 23.6 °C.
     *
     * @param floor floor temperature, 5 °C to 40 °C
     * @return the share dissatisfied
     * @throws IllegalArgumentException if the temperature lies outside
     */
    public static Quantity<Dimensionless> dissatisfied(Quantity<Temperature> floor) {
        double t = Si.within("floor", floor, Units.CELSIUS, COLDEST, HOTTEST);
        return Amounts.of(100 - 94 * Math.exp(-1.387 + 0.118 * t - 0.0025 * t * t), Units.PERCENT);
    }

    /** How comfortable a floor is wanted, after ISO 7730:2005, Annex A (the shares as read, the categories' names too). */
    public enum Category {
        /** At most 10 % dissatisfied. */
        A(10),
        /** At most 10 % dissatisfied. */
        B(10),
        /** At most 15 % dissatisfied. */
        C(15);

        private final double percent;

        Category(double percent) {
            this.percent = percent;
        }

        /**
         * The share dissatisfied a category allows.
         *
         * @return the highest share
         */
        public Quantity<Dimensionless> mostDissatisfied() {
            return Amounts.of(percent, Units.PERCENT);
        }

        /**
         * The warmest floor that displeases no larger share, by the formula: 28.0 °C for A and B, 30.1 °C for C.
         *
         * @return the temperature
         */
        public Quantity<Temperature> warmest() {
            return Amounts.celsius(edge(1));
        }

        /**
         * The coolest floor that displeases no larger share, by the formula: 19.2 °C for A and B, 17.1 °C for C.
         *
         * @return the temperature
         */
        public Quantity<Temperature> coolest() {
            return Amounts.celsius(edge(-1));
        }

        private double edge(int side) {
            double constant = 1.387 + Math.log((100 - percent) / 94);
            return (0.118 + side * Math.sqrt(0.118 * 0.118 - 4 * 0.0025 * constant)) / (2 * 0.0025);
        }

        /**
         * What the share rests on.
         *
         * @return the source
         */
        public Source source() {
            return Source.fromMemory(
                    "ISO 7730:2005, Annex A, category " + name() + ", share dissatisfied by the floor");
        }
    }

    /**
     * Judges a floor temperature by the share of people in light indoor shoes it would displease. The standard's rounded
     * table allows 19 °C to 29 °C in categories A and B and 17 °C to 31 °C in C (from memory); its formula gives 12.1 % at
     * 29 °C and 17.6 % at 31 °C. This follows the formula, which is the stricter at the warm end.
     *
     * @param subject the cable or floor judged
     * @param floor floor temperature
     * @param category the comfort wanted
     * @return a note when met, else a warning, with the share found and the share allowed; outside 5 °C to 40 °C, where the
     *     formula does not reach, a warning with the temperature and the nearer end of the category's band
     * @throws IllegalArgumentException if the temperature is not absolute
     */
    public static Finding judge(String subject, Quantity<Temperature> floor, Category category) {
        Si.kelvin("floor", floor);
        double celsius = Si.in("floor", floor, Units.CELSIUS);
        if (!(celsius >= COLDEST && celsius <= HOTTEST)) {
            boolean hot = celsius > HOTTEST;
            return Finding.of(
                    Severity.WARNING,
                    subject,
                    HeatFindings.text(
                            "At %.1f °C the floor is far too %s for people in indoor shoes, beyond the %.0f °C to %.0f °C the"
                                    + " formula is used for.",
                            celsius, hot ? "warm" : "cool", COLDEST, HOTTEST),
                    floor,
                    hot ? category.warmest() : category.coolest(),
                    SOURCE);
        }
        Quantity<Dimensionless> share = dissatisfied(floor);
        double percent = Si.in("share", share, Units.PERCENT);
        boolean met = percent <= category.percent;
        return Finding.of(
                met ? Severity.NOTE : Severity.WARNING,
                subject,
                met
                        ? HeatFindings.text(
                                "At %.1f °C, %.1f %% of people in indoor shoes would find the floor uncomfortable; category %s"
                                        + " allows %.0f %%.",
                                celsius, percent, category, category.percent)
                        : HeatFindings.text(
                                "At %.1f °C, %.1f %% of people in indoor shoes would find the floor too %s; category %s allows"
                                        + " %.0f %%: set the thermostat %s.",
                                celsius,
                                percent,
                                celsius > LEAST_DISSATISFIED ? "warm" : "cool",
                                category,
                                category.percent,
                                celsius > LEAST_DISSATISFIED ? "lower" : "higher"),
                share,
                category.mostDissatisfied(),
                SOURCE);
    }
}
