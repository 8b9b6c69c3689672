package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;

/** What a box holds, counted by NEC 314.16(B). A builder for {@link BoxFill}; not safe to share between threads. */
public final class BoxContents {

    private static final List<Csv.Row> ALLOWANCES = Csv.read("box-allowance.csv");

    private final ElectricalCode code;
    private final List<ConductorSize> sizes = new ArrayList<>();
    private double cubicInches;
    private int groundings;
    private double largestGrounding;
    private boolean clamps;
    private int supports;

    BoxContents(ElectricalCode code) {
        if (code.rule(RuleTopic.BOX_FILL).isEmpty()) {
            throw new IllegalArgumentException("box fill: " + code
                    + " was given; an edition of the NEC is expected, the only code with such a rule");
        }
        this.code = code;
    }

    /**
     * Adds conductors that end, are spliced or pass through; pigtails wholly inside the box do not count.
     *
     * @param count how many, 0 to 100
     * @param size their size, 18 to 6 AWG
     * @return this
     * @throws IllegalArgumentException if the count or the size is out of range
     */
    public BoxContents conductors(int count, ConductorSize size) {
        cubicInches += checked("conductors", count) * allowance(size);
        if (count > 0) {
            sizes.add(size);
        }
        return this;
    }

    /**
     * Adds equipment grounding conductors, which count together as the edition says.
     *
     * @param count how many, 0 to 100
     * @param size their size, 18 to 6 AWG
     * @return this
     * @throws IllegalArgumentException if the count or the size is out of range
     */
    public BoxContents groundingConductors(int count, ConductorSize size) {
        groundings += checked("grounding conductors", count);
        if (count > 0) {
            largestGrounding = Math.max(largestGrounding, allowance(size));
            sizes.add(size);
        }
        return this;
    }

    /**
     * Adds internal cable clamps, one or more: one allowance of the largest conductor in the box.
     *
     * @return this
     */
    public BoxContents internalClamps() {
        clamps = true;
        return this;
    }

    /**
     * Adds kinds of support fitting (luminaire stud, hickey): one allowance of the largest conductor each.
     *
     * @param kinds how many kinds, 0 to 2
     * @return this
     * @throws IllegalArgumentException if the count is out of range
     */
    public BoxContents supportFittings(int kinds) {
        if (kinds < 0 || kinds > 2) {
            throw new IllegalArgumentException("support fittings: " + kinds + " was given; 0 to 2 is expected");
        }
        supports = kinds;
        return this;
    }

    /**
     * Adds a device (thermostat, switch, receptacle): two allowances of the largest conductor connected to it, for each gang
     * it needs when it is wider than 50 mm (2 in.).
     *
     * @param largest largest conductor connected to it
     * @param gangs gangs it takes, 1 to 4
     * @return this
     * @throws IllegalArgumentException if the size or the gangs are out of range
     */
    public BoxContents device(ConductorSize largest, int gangs) {
        if (gangs < 1 || gangs > 4) {
            throw new IllegalArgumentException("device gangs: " + gangs + " was given; 1 to 4 is expected");
        }
        cubicInches += 2 * gangs * allowance(largest);
        return this;
    }

    /**
     * Adds a terminal block, which counts from the 2023 edition on and not before.
     *
     * @param largest largest conductor ended on it
     * @return this
     * @throws IllegalArgumentException if the size is out of range
     */
    public BoxContents terminalBlock(ConductorSize largest) {
        double one = allowance(largest);
        if (code.rule(RuleTopic.BOX_FILL_TERMINAL_BLOCK).isPresent()) {
            cubicInches += one;
        }
        return this;
    }

    /**
     * Judges the contents in a box.
     *
     * @param box volume of the box, with its marked extensions
     * @return the judgement
     * @throws IllegalArgumentException if the volume is not above 0
     */
    public BoxFill inBox(Quantity<Volume> box) {
        double largest =
                sizes.stream().mapToDouble(BoxContents::allowance).max().orElse(0);
        double grounding = groundings == 0 ? 0 : largestGrounding * (1 + extraGroundings() / 4.0);
        return BoxFill.judge(code, cubicInches + grounding + ((clamps ? 1 : 0) + supports) * largest, box);
    }

    // From the 2020 edition on the fifth and every further grounding conductor counts a quarter; before, all count as
    // one.
    private int extraGroundings() {
        return code.name().equals("NEC 2011") ? 0 : Math.max(0, groundings - 4);
    }

    private static int checked(String what, int count) {
        if (count < 0 || count > 100) {
            throw new IllegalArgumentException(what + ": " + count + " was given; 0 to 100 is expected");
        }
        return count;
    }

    /** Whether the table has an allowance for a size. */
    static boolean counts(ConductorSize size) {
        return row(size).isPresent();
    }

    private static double allowance(ConductorSize size) {
        return row(size)
                .map(row -> row.number("cubicInches"))
                .orElseThrow(() -> new IllegalArgumentException(
                        "box conductor: " + size + " was given; 18 AWG to 6 AWG is expected"));
    }

    private static Optional<Csv.Row> row(ConductorSize size) {
        return ALLOWANCES.stream()
                .filter(row -> row.text("size").equals(size.toString()))
                .findFirst();
    }
}
