package org.heatfloor.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import org.heatfloor.grid.MembraneStock;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Writes the lines of a shopping list: what is taken, the waste added, the rounding, in this order. */
final class ListWriter {

    private final PurchaseUnits units;
    private final Optional<Prices> prices;
    private final List<ShoppingLine> lines = new ArrayList<>();

    ListWriter(PurchaseUnits units, Optional<Prices> prices) {
        this.units = units;
        this.prices = prices;
    }

    List<ShoppingLine> lines() {
        return List.copyOf(lines);
    }

    private void add(Material material, String item, int count, String each, Quantity<?> quantity, String basis) {
        lines.add(new ShoppingLine(
                material, item, count, each, quantity, basis, prices.flatMap(p -> p.cost(material, count))));
    }

    void membrane(MembraneCut cut) {
        MembraneStock stock = cut.stock();
        String kind = stock.kind().name().toLowerCase(Locale.ROOT);
        add(
                Material.MEMBRANE,
                Material.MEMBRANE.toString(),
                cut.stockCount(),
                kind + " of " + units.stockText(stock.width()) + " by " + units.stockText(stock.length()),
                units.area(cut.covered()),
                units.areaText(cut.covered()) + " covered; " + cut.pieces().size()
                        + " pieces cut in phase, offcuts reused, waste " + percent(cut.waste()) + "; whole " + kind
                        + "s: " + cut.proof());
    }

    /** One line for each mortar; a mortar that serves both beds is bought once. */
    void mortars(List<MortarNeed> needs, Quantity<Dimensionless> waste) {
        boolean isOne =
                needs.size() == 2 && needs.get(0).mortar().isSameAs(needs.get(1).mortar());
        if (isOne) {
            mortar(Material.MORTAR_THROUGHOUT, needs, MortarNeed.bagsTogether(needs), waste);
            return;
        }
        for (MortarNeed need : needs) {
            Material material = need.use() == MortarUse.UNDER_MEMBRANE
                    ? Material.MORTAR_UNDER_MEMBRANE
                    : Material.MORTAR_IN_AND_OVER_MEMBRANE;
            mortar(material, List.of(need), need.bags(), waste);
        }
    }

    private void mortar(Material material, List<MortarNeed> needs, int bags, Quantity<Dimensionless> waste) {
        Mortar mortar = needs.get(0).mortar();
        double dry = 0;
        double litres = 0;
        for (MortarNeed need : needs) {
            dry += Si.in("dry", need.dry(), Units.KILOGRAM);
            litres += Si.in("volume", need.inPlace(), Units.LITRE);
        }
        Quantity<Mass> mass = Amounts.kilograms(dry);
        add(
                material,
                mortar.kind() + " " + material,
                bags,
                "bag of " + units.massText(mortar.bag()),
                units.mass(mass),
                units.massText(mass) + " dry for " + units.volumeText(Amounts.of(litres, Units.LITRE))
                        + " in place; waste " + percent(waste) + "; rounded up to whole bags, "
                        + percent(MortarNeed.inHand(dry, bags, mortar)) + " in hand");
    }

    void tile(TileLayout layout) {
        int perBox = layout.tile().supply().perBox();
        String size = units.faceText(layout.tile().length()) + " by "
                + units.faceText(layout.tile().width());
        add(
                Material.TILE,
                size + ", " + units.thicknessText(layout.tile().thickness()) + " thick",
                layout.boxes(),
                perBox == 1 ? "tile" : "box of " + perBox + " tiles",
                Amounts.of(layout.tilesToBuy() + layout.atticTiles(), Units.ONE),
                layout.wholeTiles() + " whole and " + layout.cutTiles() + " cut places take "
                        + layout.tilesNeeded() + " tiles as laid; waste "
                        + percent(layout.tile().waste()) + " makes " + layout.tilesToBuy() + "; attic stock "
                        + layout.atticTiles() + "; rounded up to whole " + (perBox == 1 ? "tiles" : "boxes"));
    }

    void grout(GroutNeed need) {
        bagged(
                Material.GROUT,
                need.mass(),
                need.bag(),
                units.groutBag(),
                units.massText(need.mass()) + " for " + units.areaText(need.joints()) + " of joints as laid, "
                        + units.thicknessText(need.depth()) + " deep; waste " + percent(need.waste()));
    }

    void soft(SoftJoints joints) {
        double litres = Si.in("sealant", joints.sealant(), Units.LITRE);
        if (litres > 0) {
            add(
                    Material.SEALANT,
                    Material.SEALANT.toString(),
                    (int) Math.ceil(litres / units.cartridgeLitres() - 1e-9),
                    units.cartridge(),
                    units.volume(joints.sealant()),
                    units.sealantText(joints.sealant()) + " for " + units.lengthText(joints.perimeter())
                            + " of perimeter and " + units.lengthText(joints.movement())
                            + " of movement joint; waste 0 %; rounded up to whole cartridges");
        }
        double run = units.length(joints.perimeter()).getValue().doubleValue();
        add(
                Material.EDGE_STRIP,
                Material.EDGE_STRIP.toString(),
                (int) Math.ceil(run - 1e-9),
                units.strip(),
                units.length(joints.perimeter()),
                units.lengthText(joints.perimeter())
                        + " along walls and columns, door openings included; waste 0 %; rounded up to the whole "
                        + units.strip());
    }

    void leveller(LevellerNeed need) {
        bagged(
                Material.LEVELLER,
                need.dry(),
                need.compound().bag(),
                units.levellerBag(),
                units.massText(need.dry()) + " dry for " + units.volumeText(need.volume()) + " in place, "
                        + units.thicknessText(need.deepest()) + " at the deepest; waste "
                        + percent(need.compound().waste()));
    }

    private void bagged(
            Material material,
            Quantity<Mass> mass,
            Optional<Quantity<Mass>> given,
            Quantity<Mass> usual,
            String basis) {
        Quantity<Mass> bag = given.orElse(usual);
        add(
                material,
                material.toString(),
                MortarNeed.wholeBags(Si.in("mass", mass, Units.KILOGRAM), Si.in("bag", bag, Units.KILOGRAM)),
                "bag of " + units.massText(bag),
                units.mass(mass),
                basis + "; rounded up to whole bags" + (given.isEmpty() ? " of a usual size" : ""));
    }

    private static String percent(Quantity<Dimensionless> share) {
        return QuantityText.number(Si.in("share", share, Units.PERCENT), 1) + " %";
    }
}
