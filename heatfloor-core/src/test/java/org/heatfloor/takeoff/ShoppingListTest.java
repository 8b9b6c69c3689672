package org.heatfloor.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.measure.Quantity;
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
                .allMatch(l -> l.basis().matches("[0-9].*; .*waste .*")
                        || (l.material() == Material.MEMBRANE && l.basis().contains("waste")))
                .allMatch(l -> l.basis().contains("rounded up") || l.basis().contains("; whole sheets: "));
        assertThat(list.total()).isEmpty();
    }

    @Test
    void usUnitsBuyTheSameThings() {
        ShoppingList metric = WASHROOM.shoppingList(PurchaseUnits.METRIC, Optional.empty());
        ShoppingList us = WASHROOM.shoppingList(PurchaseUnits.US_CUSTOMARY, Optional.empty());
        for (int i = 0; i < metric.lines().size(); i++) {
            ShoppingLine line = us.lines().get(i);
            assertThat(siValue(line.quantity()))
                    .isCloseTo(siValue(metric.lines().get(i).quantity()), within(1e-9));
            if (!PACKED_BY_UNITS.contains(line.material())) {
                assertThat(line.count()).isEqualTo(metric.lines().get(i).count());
            }
        }
        assertThat(us.toString())
                .contains("ft²")
                .contains("ft³")
                .contains("cartridge of 10.1 fl oz (300 ml)")
                .contains("bag of 10 lb, grout")
                .contains("23.62 in by 11.81 in")
                .doesNotContain(" kg")
                .doesNotContain(" mm")
                .doesNotContain(" L ")
                .doesNotContain("310");
    }

    private static final Set<Material> PACKED_BY_UNITS =
            Set.of(Material.GROUT, Material.SEALANT, Material.EDGE_STRIP, Material.LEVELLER);

    private static double siValue(Quantity<?> quantity) {
        return quantity.toSystemUnit().getValue().doubleValue();
    }

    @Test
    void twoMortarsAreTwoLinesAndOneMortarIsOne() {
        Bedding two = Schoolhouse.washroomBedding();
        assertThat(mortarLines(two))
                .extracting(ShoppingLine::item)
                .containsExactly(
                        "modified tile mortar, under membrane", "unmodified tile mortar, in and over membrane");
        assertThat(mortarLines(two)).extracting(ShoppingLine::count).containsExactly(1, 3);
        Mortar pounds = Mortar.usual(MortarKind.MODIFIED, Amounts.of(20 / 0.45359237, Units.POUND));
        Bedding one = two.withMortars(Mortar.usual(MortarKind.MODIFIED, Amounts.kilograms(20)), pounds);
        assertThat(mortarLines(one)).singleElement().satisfies(line -> {
            assertThat(line.material()).isEqualTo(Material.MORTAR_THROUGHOUT);
            assertThat(line.item()).isEqualTo("modified tile mortar, under, in and over membrane");
            assertThat(line.count()).isEqualTo(4);
            assertThat(siValue(line.quantity()))
                    .isCloseTo(
                            mortarLines(two).stream()
                                    .mapToDouble(l -> siValue(l.quantity()))
                                    .sum(),
                            within(1e-6));
        });
        Mortar larger = Mortar.usual(MortarKind.MODIFIED, Amounts.kilograms(25));
        assertThat(mortarLines(two.withMortars(larger, pounds))).hasSize(2);
    }

    private static List<ShoppingLine> mortarLines(Bedding bedding) {
        return Schoolhouse.washroomWithoutStock()
                .cable(Amounts.metres(31.5), Amounts.millimetres(5))
                .bedding(bedding)
                .build()
                .shoppingList(PurchaseUnits.METRIC, Optional.empty())
                .lines()
                .stream()
                .filter(l -> l.material().name().startsWith("MORTAR"))
                .toList();
    }

    @Test
    void levellerIsBoughtInBags() {
        SpotSurvey survey = SpotSurvey.of(List.of(
                new SpotSurvey.Spot(0, 0, Amounts.millimetres(0)),
                new SpotSurvey.Spot(2.41, 0, Amounts.millimetres(0)),
                new SpotSurvey.Spot(0, 1.96, Amounts.millimetres(-8))));
        LevellerSpec inBags = new LevellerSpec(
                Amounts.of(1.7, Units.KILOGRAM_PER_LITRE),
                Amounts.millimetres(2),
                Amounts.of(10, Units.PERCENT),
                Optional.of(Amounts.kilograms(20)));
        ShoppingLine line = Schoolhouse.washroomWithoutStock()
                .survey(survey, inBags)
                .build()
                .shoppingList(PurchaseUnits.METRIC, Optional.empty())
                .lines()
                .stream()
                .filter(l -> l.material() == Material.LEVELLER)
                .findFirst()
                .orElseThrow();
        double dry = siValue(line.quantity());
        assertThat(dry).isBetween(1.7 * 1.1 * 2 * 4.6, 1.7 * 1.1 * 10 * 4.7);
        assertThat(line.count()).isEqualTo((int) Math.ceil(dry / 20));
        assertThat(line.each()).isEqualTo("bag of 20 kg");
        assertThat(line.basis())
                .contains("waste 10 %")
                .contains("10 mm at the deepest")
                .contains("rounded up");
    }

    @Test
    void pricesMakeACost() {
        Prices prices = Prices.in(Currency.getInstance("EUR"));
        for (Material material : Material.values()) {
            prices = prices.with(material, new BigDecimal("2.50"));
        }
        ShoppingList list = WASHROOM.shoppingList(PurchaseUnits.METRIC, Optional.of(prices));
        int count = list.lines().stream().mapToInt(ShoppingLine::count).sum();
        BigDecimal total = new BigDecimal("2.50").multiply(BigDecimal.valueOf(count));
        assertThat(list.total()).contains(total);
        assertThat(list.toString()).endsWith("together EUR " + total.toPlainString());
        ShoppingList some = WASHROOM.shoppingList(
                PurchaseUnits.METRIC,
                Optional.of(Prices.in(Currency.getInstance("EUR")).with(Material.MEMBRANE, new BigDecimal("9"))));
        assertThat(some.total()).isEmpty();
        assertThat(some.toString()).contains("together EUR 63, without a price for: tile mortar, under membrane;");
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
