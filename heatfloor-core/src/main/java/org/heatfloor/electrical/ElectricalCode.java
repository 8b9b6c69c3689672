package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * One edition of an electrical code as a value: its rules with their clauses, standard ratings, conductor tables and
 * voltage drop. A limit that an edition dropped is absent from it, and where an edition is silent {@link #rule} is empty:
 * follow the listing, the cable's instructions and the local code. The figures are a design aid; the licensed text of the
 * edition in force at the site goes before them.
 */
public final class ElectricalCode {

    private static final double[] IEC_RATINGS = {6, 10, 13, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125};
    private static final double[] NEC_RATINGS = {
        15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500,
        600, 700, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000
    };

    private static final List<ElectricalCode> ALL = List.of(
            new ElectricalCode("IEC 60364", new IecWiring(false), 50, new double[] {230, 400}),
            new ElectricalCode("BS 7671:2018", new IecWiring(true), 50, new double[] {230, 400}),
            nec("NEC 2011"),
            nec("NEC 2020"),
            nec("NEC 2023"));

    private final String name;
    private final Wiring wiring;
    private final double hertz;
    private final double[] nominalVolts;
    private final Map<RuleTopic, CodeRule> rules;

    private ElectricalCode(String name, Wiring wiring, double hertz, double[] nominalVolts) {
        this.name = name;
        this.wiring = wiring;
        this.hertz = hertz;
        this.nominalVolts = nominalVolts;
        Map<RuleTopic, CodeRule> map = new EnumMap<>(RuleTopic.class);
        for (Csv.Row row : Csv.read("code-rules.csv")) {
            if (Arrays.asList(row.text("codes").split(",")).contains(name)) {
                CodeRule rule = CodeRule.of(row, name);
                if (map.put(rule.topic(), rule) != null) {
                    throw new IllegalStateException("rule table: " + rule.topic() + " stands twice for " + name);
                }
            }
        }
        this.rules = Collections.unmodifiableMap(map);
    }

    private static ElectricalCode nec(String name) {
        return new ElectricalCode(name, new NecWiring(), 60, new double[] {120, 208, 240, 277, 347, 480, 600});
    }

    /**
     * A code by its name.
     *
     * @param name {@code IEC 60364}, {@code BS 7671:2018}, {@code NEC 2011}, {@code NEC 2020} or {@code NEC 2023}
     * @return the code
     * @throws IllegalArgumentException if the name is another; the message lists the known ones
     */
    public static ElectricalCode of(String name) {
        for (ElectricalCode code : ALL) {
            if (code.name.equals(name)) {
                return code;
            }
        }
        throw new IllegalArgumentException("electrical code: '" + name + "' was given; one of " + ALL + " is expected");
    }

    /**
     * Every code known.
     *
     * @return the codes
     */
    public static List<ElectricalCode> all() {
        return ALL;
    }

    /**
     * The code's name with its edition.
     *
     * @return the name, as {@link #of} takes it
     */
    public String name() {
        return name;
    }

    /**
     * The supply frequency usual where the code applies, for leakage through capacitance.
     *
     * @return 50 Hz or 60 Hz
     */
    public Quantity<Frequency> frequency() {
        return Amounts.of(hertz, Units.HERTZ);
    }

    /**
     * All rules of the edition that this library knows.
     *
     * @return the rules by topic
     */
    public Map<RuleTopic, CodeRule> rules() {
        return rules;
    }

    /**
     * One rule of the edition.
     *
     * @param topic the topic
     * @return the rule; empty if the edition has none, or none is known here
     */
    public Optional<CodeRule> rule(RuleTopic topic) {
        return Optional.ofNullable(rules.get(topic));
    }

    /**
     * The standard ratings of protective devices, rising. NEC 240.6(A) (from 2023 with 10 A); IEC 60898-1 preferred
     * values.
     *
     * @return the ratings
     */
    public List<Quantity<ElectricCurrent>> protectiveRatings() {
        List<Quantity<ElectricCurrent>> list = new ArrayList<>();
        for (double amperes : ratings()) {
            list.add(Amounts.amperes(amperes));
        }
        return List.copyOf(list);
    }

    /**
     * The methods of installation the conductor tables have columns for. IEC and BS: reference methods. NEC: the
     * temperature column both insulation and terminals are marked for ({@code 60 °C}, {@code 75 °C}), {@code 90 °C}
     * insulation on 60 °C terminals, and {@code NM-B} nonmetallic-sheathed cable.
     *
     * @return the names
     */
    public List<String> installationMethods() {
        return wiring.methods();
    }

    /**
     * The method taken where none is stated.
     *
     * @return method C (clipped direct), or the NEC's 60 °C column
     */
    public String baseInstallationMethod() {
        return wiring.baseMethod();
    }

    /**
     * The ambient temperature the conductor table is made for.
     *
     * @return 30 °C in every table known here
     */
    public Quantity<Temperature> baseAmbient() {
        return Amounts.celsius(30);
    }

    /**
     * The conductor sizes the code's table has figures for.
     *
     * @return the sizes, rising
     */
    public List<ConductorSize> conductorSizes() {
        return wiring.sizes();
    }

    /**
     * Current-carrying capacity of a copper conductor in place.
     *
     * @param size a size the code's table has
     * @param method one of {@link #installationMethods()}
     * @param ambient ambient temperature, −40 °C to the end of the code's correction table; between two rows the less
     *     favourable one is taken
     * @param groupedCircuits circuits laid together, this one included, 1 to 20
     * @return the capacity with its corrections and sources
     * @throws IllegalArgumentException if size, method, ambient or number of circuits lies outside the tables
     */
    public Ampacity ampacity(ConductorSize size, String method, Quantity<Temperature> ambient, int groupedCircuits) {
        if (!wiring.methods().contains(method)) {
            throw new IllegalArgumentException(
                    "installation method: '" + method + "' was given; " + name + " has one of " + wiring.methods());
        }
        if (groupedCircuits < 1 || groupedCircuits > 20) {
            throw new IllegalArgumentException(
                    "grouped circuits: " + groupedCircuits + " was given; 1 to 20 is expected");
        }
        double celsius = Si.in("ambient", ambient, Units.CELSIUS);
        if (!(celsius >= -40)) {
            throw new IllegalArgumentException("ambient: " + ambient + " was given; -40 °C or more is expected");
        }
        return wiring.ampacity(this, size, method, celsius, groupedCircuits);
    }

    /**
     * Voltage lost in the circuit's conductors, there and back.
     *
     * @param size a size the code's table has
     * @param oneWayLength length from the board to the load, one way, up to 10 km
     * @param current the current
     * @return the voltage drop
     * @throws IllegalArgumentException if a figure is negative or the size is not in the code's table
     */
    public Quantity<ElectricPotential> voltageDrop(
            ConductorSize size, Quantity<Length> oneWayLength, Quantity<ElectricCurrent> current) {
        return Amounts.volts(wiring.dropVolts(
                size,
                Si.within("feeder length", oneWayLength, Units.METRE, 0, 10_000),
                Si.notNegative("current", current, Units.AMPERE)));
    }

    /** The code's name. */
    @Override
    public String toString() {
        return name;
    }

    double hertz() {
        return hertz;
    }

    boolean isNec() {
        return wiring instanceof NecWiring;
    }

    /**
     * Whether the allowance for continuous load is owed by the conductor in place, after correction: 424.4(B) of 2023 asks
     * it of the ampacity; that of 2020 says "sized" and is read in the same, stricter way; 2011 only asks it of the tabulated
     * value (210.19(A)(1)), the load itself after correction.
     */
    boolean allowanceOnConductorInPlace() {
        return required(RuleTopic.CONTINUOUS_LOAD_CONDUCTOR).source().text().contains("424.4(B)");
    }

    /** 424.38(A): 2011 keeps a cable in the room it starts in, the later editions let it leave. */
    boolean keepsCableInItsRoom() {
        return name.equals("NEC 2011");
    }

    boolean isNominal(double volts) {
        return Arrays.stream(nominalVolts).anyMatch(nominal -> Math.abs(volts / nominal - 1) < 1e-9);
    }

    double dropVolts(Supply supply, double amperes) {
        return wiring.dropVolts(
                supply.conductor(), Si.in("feeder length", supply.feederLength(), Units.METRE), amperes);
    }

    Source dropSource(ConductorSize size) {
        return wiring.dropSource(this, size);
    }

    CodeRule required(RuleTopic topic) {
        CodeRule rule = rules.get(topic);
        if (rule == null) {
            throw new IllegalStateException("rule table: " + topic + " is missing for " + name);
        }
        return rule;
    }

    Source source(RuleTopic topic) {
        return required(topic).source();
    }

    <Q extends Quantity<Q>> double limit(RuleTopic topic, Unit<Q> unit) {
        return Si.in(topic.name(), required(topic).limit(unit), unit);
    }

    /** The least standard rating not below a current. */
    OptionalDouble roundedUp(double amperes) {
        return Arrays.stream(ratings()).filter(r -> r >= amperes * (1 - 1e-9)).findFirst();
    }

    /** The greatest standard rating not above a current. */
    OptionalDouble roundedDown(double amperes) {
        return Arrays.stream(ratings()).filter(r -> r <= amperes * (1 + 1e-9)).max();
    }

    private double[] ratings() {
        if (!isNec()) {
            return IEC_RATINGS;
        }
        return name.equals("NEC 2023")
                ? DoubleStream.concat(DoubleStream.of(10), Arrays.stream(NEC_RATINGS))
                        .toArray()
                : NEC_RATINGS;
    }
}
