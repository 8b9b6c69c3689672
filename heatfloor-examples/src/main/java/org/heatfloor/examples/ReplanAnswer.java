package org.heatfloor.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.heatfloor.routing.CableCheck;
import org.heatfloor.routing.RestRoute;
import org.heatfloor.routing.Resumption;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** The answer of a re-planning as a fitter reads it: a few lines and a drawing. */
final class ReplanAnswer {

    private static final double JUST_METRES = 1e-6;

    private final RoomFile room;
    private final PlannedRoom plan;
    private final Quantity<Length> laid;
    private final Resumption answer;
    private final UserUnits units;
    private final List<String> lines = new ArrayList<>();

    ReplanAnswer(RoomFile room, PlannedRoom plan, Quantity<Length> laid, Resumption answer) {
        this.room = room;
        this.plan = plan;
        this.laid = laid;
        this.answer = answer;
        units = new UserUnits(room.coordinateUnit());
    }

    List<String> lines() {
        lines.clear();
        line(room.name() + ": " + plan.cable().name() + ", laid up to " + units.longLength(laid));
        if (answer instanceof Resumption.Onward onward) {
            line("Lift     nothing");
            rest(onward.route());
        } else if (answer instanceof Resumption.AfterLifting after) {
            after.reasons().forEach(reason -> line("Why      " + reason.message()));
            line("Lift     " + units.longLength(after.lifted()) + " of heating cable" + where(after) + "; at least "
                    + units.longLength(after.proved()) + " must be lifted, proved");
            rest(after.route());
        } else if (answer instanceof Resumption.TooLong tooLong) {
            line("Impossible: even with everything lifted the cable is too long by "
                    + units.longLength(tooLong.excess()) + "; at most " + units.longLength(tooLong.capacity())
                    + " can lie here with the least spacing, proved");
            tooLong.help().forEach(help -> line("Help     " + help.subject() + ": " + help.message()));
        } else if (answer instanceof Resumption.NotFound missed) {
            line("Not found, and not proved impossible: the longest found is " + units.longLength(missed.longestFound())
                    + ", the bound is " + units.longLength(missed.capacity()));
            missed.mustLift()
                    .ifPresent(must -> line("Lift     at least " + units.longLength(must)
                            + ", because the laid part breaks a rule of the room as it is now"));
            missed.help().forEach(help -> line("Help     " + help.subject() + ": " + help.message()));
        }
        return List.copyOf(lines);
    }

    private static String where(Resumption.AfterLifting after) {
        if (after.leadToo()) {
            return ", the cold lead too, and begin anew";
        }
        return after.keptRows() == 0 ? ", up to the joint" : ", back to row " + after.keptRows() + " from the joint";
    }

    private void rest(RestRoute route) {
        CableCheck check = route.check().cables().get(0);
        line("Lay      " + units.longLength(route.restLength()) + " more with " + route.restTurns()
                + " right-angle turns, exactly: "
                + units.shortLength(check.leftOver()) + " left over");
        line("Check    the whole cable passes: least spacing "
                + check.leastSeparation().map(units::shortLength).orElse("none") + ", sharpest bend "
                + check.leastBendRadius().map(units::shortLength).orElse("none")
                + ", cold share " + UserUnits.written(route.whole().coldShare(), Units.PERCENT, 1));
        line("Room     at most " + units.longLength(route.most()) + " of cable could lie here with what stays, proved");
    }

    private void line(String text) {
        TextLines.wrapped(text, Summary.COLUMNS).forEach(line -> lines.add(Fault.printable(line)));
    }

    /** The drawing; empty where there is nothing to lay. */
    Optional<String> drawing() {
        Optional<RestRoute> route = answer instanceof Resumption.Onward onward
                ? Optional.of(onward.route())
                : answer instanceof Resumption.AfterLifting after ? Optional.of(after.route()) : Optional.empty();
        return route.map(r -> {
            List<PlanSheet.Run> runs = new ArrayList<>();
            boolean comesBack = plan.cable().conductors() == 1;
            List<LineString> leads = r.whole().coldLeads();
            runs.add(new PlanSheet.Run(
                    "to lay",
                    units.longLength(r.restLength()) + ", " + r.restTurns() + " right-angle turns",
                    r.rest(),
                    comesBack ? leads.subList(1, 2) : List.of(),
                    comesBack ? List.of(r.rest().getEndPoint()) : List.of(),
                    !comesBack,
                    Optional.empty(),
                    Optional.empty()));
            boolean stays = metres(r.keptLength()) > JUST_METRES;
            List<Point> joint = List.of(r.whole().line().getStartPoint());
            if (stays) {
                runs.add(new PlanSheet.Run(
                        "laid",
                        units.longLength(r.keptLength()) + " stay",
                        r.kept(),
                        leads.subList(0, 1),
                        joint,
                        false,
                        Optional.empty(),
                        Optional.empty()));
            }
            PlanSheet sheet = PlanSheets.of(room, plan.lattice(), headline(), runs);
            return PlanDrawing.svg(sheet, lifted(r));
        });
    }

    private String headline() {
        if (answer instanceof Resumption.AfterLifting after) {
            return plan.cable().name() + ": lift " + units.longLength(after.lifted()) + ", then lay the rest";
        }
        return plan.cable().name() + ": lay the rest, nothing to lift";
    }

    /** The piece of the plan that lay beyond what stays. */
    private Optional<LineString> lifted(RestRoute route) {
        double from = metres(route.keptLength());
        double to = metres(laid);
        if (to - from < JUST_METRES) {
            return Optional.empty();
        }
        LengthIndexedLine line = new LengthIndexedLine(plan.line());
        return Optional.of((LineString) line.extractLine(from, to));
    }

    private static double metres(Quantity<Length> length) {
        return length.subtract(Amounts.metres(0)).to(Units.METRE).getValue().doubleValue();
    }
}
