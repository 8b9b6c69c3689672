package org.heatfloor.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.Optional;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;

class ShoppingListTest {

    private static final TakeOff WASHROOM = Schoolhouse.washroom().build();

    @Test
    void everyLineSaysWhatItRestsOn() {
        ShoppingList list = WASHROOM.shoppingList(PurchaseUnits.METRIC, Optional.empty());
        assertThat(list.lines())
                .extracting(ShoppingLine::material)
                .containsExactly(
                        Material.MEMBRANE,
                        Material.MORTAR_UNDER_MEMBRANE,
                        Material.MORTAR_IN_AND_OVER_MEMBRANE,
                        Material.TILE,
                        Material.GROUT,
                        Material.SEALANT,
                        Material.EDGE_STRIP);
        assertThat(list.lines())
                .allMatch(l -> l.count() >= 1)
                .allMatch(l -> l.basis().contains("waste") || l.material() == Material.EDGE_STRIP);
        assertThat(list.lines())
                .allMatch(l -> l.basis().contains("round")
                        || l.basis().contains("whole")
                        || l.basis().contains("not given"));
        assertThat(list.total()).isEmpty();
    }

    @Test
    void usUnitsBuyTheSameThings() {
        ShoppingList metric = WASHROOM.shoppingList(PurchaseUnits.METRIC, Optional.empty());
        ShoppingList us = WASHROOM.shoppingList(PurchaseUnits.US_CUSTOMARY, Optional.empty());
        for (int i = 0; i < metric.lines().size(); i++) {
            if (metric.lines().get(i).material() != Material.EDGE_STRIP) {
                assertThat(us.lines().get(i).count())
                        .isEqualTo(metric.lines().get(i).count());
            }
        }
        assertThat(us.toString())
                .contains("ft²")
                .contains("lb")
                .contains("23.62 in by 11.81 in")
                .doesNotContain(" kg")
                .doesNotContain(" mm");
    }

    @Test
    void pricesMakeACost() {
        Prices prices = Prices.in(Currency.getInstance("EUR"));
        for (Material material : Material.values()) {
            prices = prices.with(material, new BigDecimal("2.50"));
        }
        ShoppingList list = WASHROOM.shoppingList(PurchaseUnits.METRIC, Optional.of(prices));
        int count = list.lines().stream().mapToInt(ShoppingLine::count).sum();
        assertThat(list.total()).contains(new BigDecimal("2.50").multiply(BigDecimal.valueOf(count)));
    }

    @Test
    void boxesAndAtticStockAreRoundedUpLast() {
        TileSpec tile = Schoolhouse.washroomTile()
                .withSupply(new TileSupply(6, Amounts.of(5, Units.PERCENT), Amounts.millimetres(3), true));
        TileLayout layout = TileLayout.of(Schoolhouse.washroomRoom(), tile, LayoutRule.USUAL);
        assertThat(layout.atticTiles()).isEqualTo((int) Math.ceil(layout.tilesNeeded() * 0.05));
        assertThat(layout.boxes() * 6).isGreaterThanOrEqualTo(layout.tilesToBuy() + layout.atticTiles());
        assertThat((layout.boxes() - 1) * 6).isLessThan(layout.tilesToBuy() + layout.atticTiles());
    }
}
