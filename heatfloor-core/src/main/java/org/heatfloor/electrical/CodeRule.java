package org.heatfloor.electrical;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * One rule of one edition of a code, restated.
 *
 * @param topic what it is about
 * @param text the rule in a sentence
 * @param limit its figure, where it has one
 * @param source document, edition and clause, with the mark that belongs to how it is known
 */
public record CodeRule(RuleTopic topic, String text, Optional<Quantity<?>> limit, Source source) {

    /**
     * Checks the parts.
     *
     * @param topic what it is about
     * @param text the rule in a sentence
     * @param limit its figure, where it has one
     * @param source document, edition and clause, with the mark that belongs to how it is known
     * @throws IllegalArgumentException if the text is blank
     */
    public CodeRule {
        Objects.requireNonNull(topic, "topic");
        Objects.requireNonNull(limit, "limit");
        Objects.requireNonNull(source, "source");
        if (text.isBlank()) {
            throw new IllegalArgumentException("rule text: blank; a sentence is expected");
        }
    }

    /**
     * The rule's figure in a unit.
     *
     * @param <Q> the kind of quantity
     * @param unit a unit of the figure's dimension
     * @return the figure
     * @throws IllegalArgumentException if the rule has no figure or one of another dimension
     */
    public <Q extends Quantity<Q>> Quantity<Q> limit(Unit<Q> unit) {
        Quantity<?> figure = limit.orElseThrow(() ->
                new IllegalArgumentException("rule " + topic + ": has no figure; one in " + unit + " is asked for"));
        // Si.in compares the dimensions, which is what makes the cast safe.
        @SuppressWarnings("unchecked")
        Quantity<Q> typed = (Quantity<Q>) figure;
        return Amounts.of(Si.in("rule " + topic, typed, unit), unit);
    }

    static CodeRule of(Csv.Row row, String code) {
        String document = row.text("document").equals("*") ? code : row.text("document");
        String text = row.text("text");
        String value = row.text("value");
        Optional<Quantity<?>> limit =
                value.isEmpty() ? Optional.empty() : Optional.of(quantity(value, unit(row.text("unit"))));
        return new CodeRule(
                RuleTopic.valueOf(row.text("topic")),
                text,
                limit,
                Provenance.source(row.text("provenance"), document, row.text("clause"), text));
    }

    private static <Q extends Quantity<Q>> Quantity<?> quantity(String value, Unit<Q> unit) {
        return Amounts.of(Double.parseDouble(value), unit);
    }

    private static Unit<?> unit(String symbol) {
        for (Unit<?> unit : new Unit<?>[] {
            Units.AMPERE,
            Units.MILLIAMPERE,
            Units.PERCENT,
            Units.METRE,
            Units.MILLIMETRE,
            Units.WATT_PER_METRE,
            Units.WATT_PER_SQUARE_METRE,
            Units.VOLT,
            Units.MEGAOHM,
            Units.CELSIUS
        }) {
            if (QuantityText.name(unit).equals(symbol)) {
                return unit;
            }
        }
        throw new IllegalStateException("rule table: unit '" + symbol + "' is unknown");
    }
}
