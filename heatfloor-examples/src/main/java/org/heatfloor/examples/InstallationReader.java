package org.heatfloor.examples;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.heatfloor.electrical.CablePlace;
import org.heatfloor.electrical.ConductorSize;
import org.heatfloor.electrical.ControlDevice;
import org.heatfloor.electrical.Embedding;
import org.heatfloor.electrical.InstallationDetails;
import org.heatfloor.electrical.LeadColour;
import org.heatfloor.electrical.RoomUse;
import org.heatfloor.electrical.WetRoomZone;
import org.heatfloor.quantity.LinearCapacitance;
import org.heatfloor.quantity.Units;

/** Reads what a room file says of the electrical installation beyond its supply; every key may be left out. */
final class InstallationReader {

    static final Map<String, RoomUse> ROOMS = RoomFileReader.words(RoomUse.values());
    static final Map<String, Embedding> EMBEDDINGS = RoomFileReader.words(Embedding.values());
    static final Map<String, LeadColour> COLOURS = RoomFileReader.words(LeadColour.values());
    static final Map<String, CablePlace> PLACES = RoomFileReader.words(CablePlace.values());
    static final Map<String, WetRoomZone> ZONES = RoomFileReader.words(WetRoomZone.values());

    private InstallationReader() {}

    private record Control(ControlDevice device, Optional<WetRoomZone> zone) {}

    private record Box(Quantity<Volume> volume, boolean clamps) {}

    static Optional<InstallationDetails> installation(Section s) {
        Optional<RoomUse> use = s.choiceIfGiven("room", ROOMS);
        Optional<Embedding> embedding = s.choiceIfGiven("embedding", EMBEDDINGS);
        Optional<Control> control = s.sectionIfGiven("thermostat", InstallationReader::control);
        Optional<LeadColour> colour = s.choiceIfGiven("leadColour", COLOURS);
        boolean panelSet = s.flag("panelSet", false);
        Optional<List<CablePlace>> places = places(s);
        Optional<Quantity<Length>> mesh = s.quantityIfGiven("earthedMesh", Bounds.of(Units.MILLIMETRE, 0.5, 500));
        Optional<Quantity<LinearCapacitance>> capacitance =
                s.quantityIfGiven("capacitance", Bounds.of(Units.PICOFARAD_PER_METRE, 1, 10_000));
        Optional<ConductorSize> lead =
                s.has("coldLeadConductor") ? CableReader.size(s, "coldLeadConductor") : s.absent("coldLeadConductor");
        Optional<Box> box = s.sectionIfGiven("box", InstallationReader::box);
        boolean apart = s.flag("circuitsApart", false);
        return s.build(() -> {
            InstallationDetails.Builder details = InstallationDetails.builder();
            use.ifPresent(details::roomUse);
            embedding.ifPresent(details::embedding);
            control.ifPresent(c -> details.control(c.device()));
            control.flatMap(Control::zone).ifPresent(details::controlZone);
            colour.ifPresent(details::leadColour);
            places.ifPresent(p -> details.places(p.toArray(CablePlace[]::new)));
            mesh.ifPresent(details::earthedMesh);
            capacitance.ifPresent(details::capacitance);
            lead.ifPresent(details::coldLeadConductor);
            box.ifPresent(b -> details.box(b.volume(), b.clamps()));
            if (panelSet) {
                details.panelSet();
            }
            if (apart) {
                details.circuitsApart();
            }
            return details.build();
        });
    }

    private static Optional<Control> control(Section s) {
        Optional<String> name = s.has("name") ? s.name("name") : s.absent("name");
        Optional<Quantity<ElectricCurrent>> current = s.quantity("current", Bounds.of(Units.AMPERE, 0.1, 400));
        Optional<Quantity<ElectricPotential>> voltage = s.quantity("voltage", Bounds.of(Units.VOLT, 1, 1_000));
        boolean disconnects = s.flag("disconnects", false);
        Optional<WetRoomZone> zone = s.choiceIfGiven("zone", ZONES);
        return s.build(() -> new Control(
                new ControlDevice(name.orElse("thermostat"), current.orElseThrow(), voltage.orElseThrow(), disconnects),
                zone));
    }

    private static Optional<Box> box(Section s) {
        Optional<Quantity<Volume>> volume = s.quantity("volume", Bounds.of(Units.CUBIC_CENTIMETRE, 10, 20_000));
        boolean clamps = s.flag("clamps", false);
        return s.build(() -> new Box(volume.orElseThrow(), clamps));
    }

    private static Optional<List<CablePlace>> places(Section s) {
        Optional<JsonNode> list = s.peek("places");
        if (list.isEmpty()) {
            return Optional.empty();
        }
        String expected = "a list of words out of " + String.join(", ", PLACES.keySet());
        List<CablePlace> places = new ArrayList<>();
        if (!list.get().isArray()) {
            s.fault("places", JsonText.kind(list.get()), expected);
            return Optional.empty();
        }
        for (JsonNode word : list.get()) {
            CablePlace place = word.isTextual() ? PLACES.get(word.textValue()) : null;
            if (place == null || places.contains(place)) {
                s.fault(
                        "places",
                        JsonText.kind(word) + (place == null ? "" : " a second time"),
                        expected + ", each once");
            } else {
                places.add(place);
            }
        }
        return Optional.of(places);
    }
}
