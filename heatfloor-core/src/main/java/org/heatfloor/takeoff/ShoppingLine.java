package org.heatfloor.takeoff;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;

/**
 * One line of a shopping list.
 *
 * @param material what it is for
 * @param item what to buy, in words
 * @param count how many to buy
 * @param each what one of them is
 * @param quantity what the floor takes, waste included, in the list's units
 * @param basis what the count rests on: quantity, waste rule, rounding
 * @param cost price times count, where a price was given
 */
public record ShoppingLine(
        Material material,
        String item,
        int count,
        String each,
        Quantity<?> quantity,
        String basis,
        Optional<BigDecimal> cost) {

    /**
     * Checks the parts.
     *
     * @param material what it is for
     * @param item what to buy, in words
     * @param count how many to buy
     * @param each what one of them is
     * @param quantity what the floor takes, waste included, in the list's units
     * @param basis what the count rests on: quantity, waste rule, rounding
     * @param cost price times count, where a price was given
     */
    public ShoppingLine {
        Objects.requireNonNull(material, "material");
        Objects.requireNonNull(item, "item");
        Objects.requireNonNull(each, "each");
        Objects.requireNonNull(quantity, "quantity");
        Objects.requireNonNull(basis, "basis");
        Objects.requireNonNull(cost, "cost");
    }

    /** The line as printed. */
    @Override
    public String toString() {
        return count + " × " + each + ", " + item + " (" + basis + ")"
                + cost.map(c -> ": " + c.toPlainString()).orElse("");
    }
}
