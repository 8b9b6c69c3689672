package org.heatfloor.examples;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.heatfloor.plan.Plan;
import org.heatfloor.plan.Planner;
import org.heatfloor.takeoff.Practice;
import org.heatfloor.takeoff.PurchaseUnits;
import org.heatfloor.takeoff.TakeOff;
import org.heatfloor.takeoff.TakeOffBuilder;

/**
 * Draws what is to be cut and laid for one room: {@code ROOM.json OUTDIR}. Writes {@code membrane.svg}, the membrane's
 * pieces in the room and on their sheets or rolls, and {@code tiles.svg}, the tiles as laid, as far as the room file says
 * enough for them, and prints the shopping list.
 */
public final class TakeoffSheets {

    private TakeoffSheets() {}

    /**
     * Runs the program.
     *
     * @param args the room file and the folder for the drawings
     */
    public static void main(String[] args) {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        int status = run(out, err, args);
        if (status != PlanRoom.COMPLETE) {
            System.exit(status);
        }
    }

    /**
     * Runs the program without ending the process.
     *
     * @param out where the shopping list goes
     * @param err where faults go, one a line
     * @param args the room file and the folder for the drawings
     * @return 0, or 2 for bad input
     */
    public static int run(PrintStream out, PrintStream err, String... args) {
        if (args.length != 2) {
            err.println(Fault.of("arguments", args.length + " arguments", "ROOM.json OUTDIR")
                    .line("TakeoffSheets"));
            return PlanRoom.BAD_INPUT;
        }
        try {
            RoomFile file = RoomFileReader.read(Path.of(args[0]));
            Plan plan = Planner.plan(Briefs.of(file));
            if (plan.takeOff().isEmpty()) {
                out.println("No cable fits as the room file stands; the mortar is counted without one.");
            }
            TakeOff takeOff = plan.takeOff().orElseGet(() -> withoutCable(file, plan));
            new Results(Path.of(args[1])).write(drawings(file, takeOff));
            out.println(takeOff.shoppingList(units(file), Optional.empty()));
            return PlanRoom.COMPLETE;
        } catch (BadRoomFile e) {
            e.faults().forEach(fault -> err.println(fault.line(args[0])));
            return PlanRoom.BAD_INPUT;
        }
    }

    private static PurchaseUnits units(RoomFile file) {
        return file.coordinateUnit().isImperial() ? PurchaseUnits.US_CUSTOMARY : PurchaseUnits.METRIC;
    }

    /** What the floor takes when no cable could be planned. */
    private static TakeOff withoutCable(RoomFile file, Plan plan) {
        TakeOffBuilder builder = TakeOff.of(file.room(), file.membrane(), plan.lattice())
                .practice(units(file) == PurchaseUnits.US_CUSTOMARY ? Practice.NORTH_AMERICA : Practice.EUROPE)
                .keepOuts(file.keepOuts())
                .doors(file.doors());
        file.tile().ifPresent(builder::tile);
        file.bedding().ifPresent(builder::bedding);
        return builder.build();
    }

    /** The drawings a take-off allows, by file name. */
    static Map<String, String> drawings(RoomFile file, TakeOff takeOff) {
        Map<String, String> drawings = new HashMap<>();
        takeOff.membraneCut()
                .ifPresent(cut -> drawings.put(
                        "membrane.svg",
                        CutSheet.svg(
                                file, file.name() + ": membrane", pen -> new MembraneDrawing(pen, file, cut).draw())));
        takeOff.layout()
                .ifPresent(layout -> drawings.put(
                        "tiles.svg",
                        CutSheet.svg(file, file.name() + ": tiles", pen -> new TileDrawing(pen, file, layout).draw())));
        return drawings;
    }
}
