package org.heatfloor.area;

import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;

/**
 * The clearance the trade usually keeps from a kind of keep-out, and why. It is a default to be shown and replaced; the
 * cable's instructions come first.
 *
 * @param kind what it is kept from
 * @param clearance from the shape's edge to the cable's centre line
 * @param reason why
 * @param source what the figure rests on
 */
public record UsualClearance(KeepOutKind kind, TradeLength clearance, String reason, Source source) {

    /**
     * The usual clearance from a kind of keep-out.
     *
     * @param kind what it is kept from
     * @return the clearance with its reason and source
     */
    public static UsualClearance of(KeepOutKind kind) {
        return switch (kind) {
            case TOILET_FLANGE -> studs(kind, 7, "the wax seal of the flange softens when warmed");
            case AIR_REGISTER -> studs(kind, 4, "moving air carries the heat off and a sensor there reads wrong");
            case FIXED_FURNITURE ->
                millimetres(kind, 30, "heat cannot leave beneath furniture without legs, and no one stands there");
            case FURNITURE_ON_LEGS ->
                millimetres(kind, 30, "heat leaves beneath furniture only when it stands high enough above the floor");
            case SHOWER_TRAY -> millimetres(kind, 50, "the tray covers the floor and its seal stays cool");
            case BATH -> millimetres(kind, 50, "heat cannot leave beneath the bath, and no one stands there");
            case DRAIN -> millimetres(kind, 50, "the drain's flange and seal are bonded to the floor");
            case COLUMN -> millimetres(kind, 60, "as for walls: the edge joint and later fixings");
            case THRESHOLD -> millimetres(kind, 50, "the threshold is screwed down");
            case MOVEMENT_JOINT -> millimetres(kind, 40, "the floor moves at the joint; no heating cable bridges it");
            case OTHER -> millimetres(kind, 50, "kept free on request");
        };
    }

    private static UsualClearance studs(KeepOutKind kind, int count, String reason) {
        return new UsualClearance(
                kind, TradeLength.studs(count), reason, Source.commonPractice(count + " studs from " + words(kind)));
    }

    private static UsualClearance millimetres(KeepOutKind kind, double millimetres, String reason) {
        TradeLength clearance = TradeLength.of(Amounts.millimetres(millimetres));
        return new UsualClearance(kind, clearance, reason, Source.commonPractice(clearance + " from " + words(kind)));
    }

    private static String words(KeepOutKind kind) {
        return kind.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }
}
