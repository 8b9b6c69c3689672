package org.heatfloor.takeoff;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.heatfloor.grid.MembraneStock;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Everything to buy on one list, each line with what it rests on. */
public final class ShoppingList {

    /** A common cartridge, in litres (common practice, no source). */
    private static final double CARTRIDGE_LITRES = 0.310;

    private final List<ShoppingLine> lines;

    private ShoppingList(List<ShoppingLine> lines) {
        this.lines = List.copyOf(lines);
    }

    static ShoppingList of(TakeOff takeOff, PurchaseUnits units, Optional<Prices> prices) {
        List<ShoppingLine> lines = new ArrayList<>();
        Writer writer = new Writer(lines, units, prices);
        takeOff.membraneCut().ifPresent(writer::membrane);
        takeOff.mortars().forEach(m -> writer.mortar(m, takeOff.mortarWaste()));
        takeOff.layout().ifPresent(writer::tile);
        takeOff.grout().ifPresent(writer::grout);
        takeOff.softJoints().ifPresent(writer::soft);
        takeOff.leveller().ifPresent(writer::leveller);
        return new ShoppingList(lines);
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
     * The sum of all costs.
     *
     * @return the sum, when every line has one
     */
    public Optional<BigDecimal> total() {
        BigDecimal sum = BigDecimal.ZERO;
        for (ShoppingLine line : lines) {
            if (line.cost().isEmpty()) {
                return Optional.empty();
            }
            sum = sum.add(line.cost().get());
        }
        return Optional.of(sum);
    }

    /** One line for each purchase. */
    @Override
    public String toString() {
        return String.join("\n", lines.stream().map(ShoppingLine::toString).toList());
    }

    private record Writer(List<ShoppingLine> lines, PurchaseUnits units, Optional<Prices> prices) {

        private void add(Material material, int count, String each, Quantity<?> quantity, String basis) {
            lines.add(new ShoppingLine(
                    material, count, each, quantity, basis, prices.flatMap(p -> p.cost(material, count))));
        }

        void membrane(MembraneCut cut) {
            MembraneStock stock = cut.stock();
            String size = PurchaseUnits.text(units.length(stock.width())) + " by "
                    + PurchaseUnits.text(units.length(stock.length()));
            String bound = cut.isProvenLeast() ? "no cut takes fewer" : "at least " + cut.lowerBound() + " by area";
            add(
                    Material.MEMBRANE,
                    cut.stockCount(),
                    stock.kind().name().toLowerCase(Locale.ROOT) + " of " + size,
                    units.area(cut.covered()),
                    PurchaseUnits.text(units.area(cut.covered())) + " covered; "
                            + cut.pieces().size()
                            + " pieces cut in phase, offcuts reused, waste " + percent(cut.waste()) + "; whole "
                            + stock.kind().name().toLowerCase(Locale.ROOT) + "s; " + bound);
        }

        void mortar(MortarNeed need, Quantity<Dimensionless> waste) {
            Material material = need.use() == MortarUse.UNDER_MEMBRANE
                    ? Material.MORTAR_UNDER_MEMBRANE
                    : Material.MORTAR_IN_AND_OVER_MEMBRANE;
            add(
                    material,
                    need.bags(),
                    "bag of " + PurchaseUnits.text(units.mass(need.bag())),
                    units.mass(need.dry()),
                    PurchaseUnits.text(units.mass(need.dry())) + " dry for "
                            + PurchaseUnits.text(units.volume(need.inPlace())) + " in place; waste "
                            + percent(waste) + "; rounded up to whole bags, " + percent(need.inHand()) + " in hand");
        }

        void tile(TileLayout layout) {
            int perBox = layout.tile().supply().perBox();
            String size = PurchaseUnits.text(units.face(layout.tile().length())) + " by "
                    + PurchaseUnits.text(units.face(layout.tile().width()));
            add(
                    Material.TILE,
                    layout.boxes(),
                    perBox == 1 ? "tile " + size : "box of " + perBox + " tiles " + size,
                    Amounts.of(layout.tilesToBuy(), Units.ONE),
                    layout.wholeTiles() + " whole and " + layout.cutTiles() + " cut places take "
                            + layout.tilesNeeded() + " tiles as laid; waste "
                            + percent(layout.tile().waste()) + " makes " + layout.tilesToBuy() + "; attic stock "
                            + layout.atticTiles() + "; rounded up to whole " + (perBox == 1 ? "tiles" : "boxes"));
        }

        void grout(GroutNeed need) {
            String mass = PurchaseUnits.text(units.mass(need.mass()));
            String rounding = need.bags().isPresent() ? "rounded up to whole bags" : "bag size not given";
            add(
                    Material.GROUT,
                    need.bags().orElse(1),
                    need.bag()
                            .map(b -> "bag of " + PurchaseUnits.text(units.mass(b)))
                            .orElse("lot of " + mass),
                    units.mass(need.mass()),
                    mass + " from " + PurchaseUnits.text(units.area(need.joints())) + " of joints as laid; waste "
                            + percent(need.waste()) + "; " + rounding);
        }

        void soft(SoftJoints joints) {
            double litres = Si.in("sealant", joints.sealant(), Units.LITRE);
            if (litres > 0) {
                add(
                        Material.SEALANT,
                        (int) Math.ceil(litres / CARTRIDGE_LITRES - 1e-9),
                        "cartridge of 310 ml",
                        units.volume(joints.sealant()),
                        PurchaseUnits.text(units.length(joints.perimeter())) + " of perimeter and "
                                + PurchaseUnits.text(units.length(joints.movement()))
                                + " of movement joint; no waste added; rounded up to whole cartridges");
            }
            double run = Si.in(
                    "perimeter",
                    units.length(joints.perimeter()),
                    units.length(joints.perimeter()).getUnit());
            add(
                    Material.EDGE_STRIP,
                    (int) Math.ceil(run - 1e-9),
                    units == PurchaseUnits.METRIC ? "metre" : "foot",
                    units.length(joints.perimeter()),
                    PurchaseUnits.text(units.length(joints.perimeter()))
                            + " along walls and columns, door openings included; rounded up");
        }

        void leveller(LevellerNeed need) {
            String volume = PurchaseUnits.text(units.volume(need.volume()));
            add(
                    Material.LEVELLER,
                    1,
                    "lot of " + volume,
                    units.volume(need.volume()),
                    volume + " in place, " + PurchaseUnits.text(need.deepest()) + " at the deepest; no waste added; bag"
                            + " size not given");
        }

        private static String percent(Quantity<Dimensionless> share) {
            return QuantityText.number(Si.in("share", share, Units.PERCENT), 1) + " %";
        }
    }
}
