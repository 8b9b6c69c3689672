package org.heatfloor.examples;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.area.TradeLength;
import org.heatfloor.grid.LatticeChoice;
import org.heatfloor.plan.Brief;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.routing.CableToLay;
import org.heatfloor.routing.RouteSite;

/** Room files of this module made ready for the benches, so that reading them is not measured. */
public final class BenchFloors {

    private static final Path ROOMS = Path.of("rooms");

    private BenchFloors() {}

    /**
     * The bathrooms: every file that forces one cable.
     *
     * @return the floors, in the order of their names
     * @throws IOException if one cannot be read
     */
    public static List<SmallRoom> bathrooms() throws IOException {
        List<SmallRoom> floors = new ArrayList<>();
        for (Path file : PrototypeComparison.files(ROOMS.resolve("router"))) {
            floors.add(SmallRoom.read(file));
        }
        return floors;
    }

    /**
     * One floor of {@code rooms/small} or {@code rooms/router}.
     *
     * @param name the file's name with its folder, without its ending
     * @return the floor
     * @throws IOException if it cannot be read
     */
    public static SmallRoom floor(String name) throws IOException {
        return SmallRoom.read(ROOMS.resolve(name + ".json"));
    }

    /**
     * The hall of 60 m² as the router takes it.
     *
     * @return its site, on the lattice that the planner would choose
     * @throws IOException if the file cannot be read
     */
    public static RouteSite hall() throws IOException {
        RoomFile file = read(ROOMS.resolve("hall.json"));
        TradeLength wall = Briefs.wallClearance(file);
        return RouteSite.of(
                file.room(),
                wall,
                file.keepOuts(),
                LatticeChoice.choose(file.membrane(), file.room(), wall, file.keepOuts()),
                file.cable().minSpacing().with(file.membrane().studPitch()),
                file.cable().minBendRadius(),
                file.cable().start(),
                file.cable().riser(),
                file.cable().jointLength());
    }

    /**
     * One cable for a whole floor.
     *
     * @param length its length
     * @return a two-conductor cable of 5 mm with a cold lead of 6 m
     */
    public static CableToLay cable(Quantity<Length> length) {
        return new CableToLay("one", 2, length, Amounts.millimetres(5), Amounts.metres(6));
    }

    /**
     * A schoolhouse room as a brief.
     *
     * @param name the file's name without its ending
     * @return the brief
     * @throws IOException if it cannot be read
     */
    public static Brief brief(String name) throws IOException {
        return Briefs.of(read(ROOMS.resolve(name + ".json")));
    }

    static RoomFile read(Path file) throws IOException {
        try {
            return RoomFileReader.read(file);
        } catch (BadRoomFile e) {
            throw new IOException(file + ": " + e.faults(), e);
        }
    }
}
