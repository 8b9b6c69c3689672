package org.heatfloor.takeoff;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Prices of one purchase unit each: a sheet or roll, a bag, a tile or box, a cartridge, a metre or foot of strip. */
public final class Prices {

    private final Currency currency;
    private final Map<Material, BigDecimal> each;

    private Prices(Currency currency, Map<Material, BigDecimal> each) {
        this.currency = currency;
        this.each = each;
    }

    /**
     * No prices yet.
     *
     * @param currency they are in
     * @return prices without entries
     */
    public static Prices in(Currency currency) {
        return new Prices(Objects.requireNonNull(currency, "currency"), new EnumMap<>(Material.class));
    }

    /**
     * The same prices with one more.
     *
     * @param material what it is for
     * @param price of one purchase unit, zero or more
     * @return a copy
     * @throws IllegalArgumentException if the price is negative
     */
    public Prices with(Material material, BigDecimal price) {
        if (!(price.signum() >= 0)) {
            throw new IllegalArgumentException(
                    "price of " + material + ": " + price + " was given; 0 or more is expected");
        }
        Map<Material, BigDecimal> more = new EnumMap<>(Material.class);
        more.putAll(each);
        more.put(material, price);
        return new Prices(currency, more);
    }

    /**
     * The currency.
     *
     * @return the currency
     */
    public Currency currency() {
        return currency;
    }

    /**
     * The price of one purchase unit.
     *
     * @param material what it is for
     * @return the price, where given
     */
    public Optional<BigDecimal> of(Material material) {
        return Optional.ofNullable(each.get(material));
    }

    /** A mortar that serves throughout may be priced as such, or as the one under the membrane. */
    Optional<BigDecimal> cost(Material material, int count) {
        Optional<BigDecimal> price = of(material);
        if (price.isEmpty() && material == Material.MORTAR_THROUGHOUT) {
            price = of(Material.MORTAR_UNDER_MEMBRANE);
        }
        return price.map(p -> p.multiply(BigDecimal.valueOf(count)));
    }
}
