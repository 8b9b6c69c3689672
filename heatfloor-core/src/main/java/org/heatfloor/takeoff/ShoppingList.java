package org.heatfloor.takeoff;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Everything to buy on one list, each line with what it rests on. */
public final class ShoppingList {

    private final List<ShoppingLine> lines;
    private final Optional<Currency> currency;

    private ShoppingList(List<ShoppingLine> lines, Optional<Currency> currency) {
        this.lines = List.copyOf(lines);
        this.currency = currency;
    }

    static ShoppingList of(TakeOff takeOff, PurchaseUnits units, Optional<Prices> prices) {
        ListWriter writer = new ListWriter(units, prices);
        takeOff.membraneCut().ifPresent(writer::membrane);
        writer.mortars(takeOff.mortars(), takeOff.mortarWaste());
        takeOff.layout().ifPresent(writer::tile);
        takeOff.grout().ifPresent(writer::grout);
        takeOff.softJoints().ifPresent(writer::soft);
        takeOff.leveller().ifPresent(writer::leveller);
        return new ShoppingList(writer.lines(), prices.map(Prices::currency));
    }

    /**
     * The lines.
     *
     * @return in the order of the work
     */
    public List<ShoppingLine> lines() {
        return lines;
    }

    /**
     * The currency of all costs.
     *
     * @return the currency, where prices were given
     */
    public Optional<Currency> currency() {
        return currency;
    }

    /**
     * The sum of all costs.
     *
     * @return the sum, when every line has one
     */
    public Optional<BigDecimal> total() {
        return unpriced().isEmpty() ? Optional.of(sum()) : Optional.empty();
    }

    private BigDecimal sum() {
        return lines.stream().flatMap(l -> l.cost().stream()).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private List<ShoppingLine> unpriced() {
        return lines.stream().filter(l -> l.cost().isEmpty()).toList();
    }

    /** One line for each purchase, and what they cost together where prices were given. */
    @Override
    public String toString() {
        String list = lines.stream().map(ShoppingLine::toString).collect(Collectors.joining("\n"));
        return list + currency.map(this::costs).orElse("");
    }

    private String costs(Currency in) {
        String missing = unpriced().stream().map(l -> l.material().toString()).collect(Collectors.joining("; "));
        return "\ntogether " + in.getCurrencyCode() + " " + sum().toPlainString()
                + (missing.isEmpty() ? "" : ", without a price for: " + missing);
    }
}
