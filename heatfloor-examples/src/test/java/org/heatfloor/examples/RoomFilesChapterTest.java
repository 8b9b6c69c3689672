package org.heatfloor.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.electrical.CablePlace;
import org.heatfloor.electrical.ConductorSize;
import org.heatfloor.electrical.ElectricalCode;
import org.heatfloor.electrical.Embedding;
import org.heatfloor.electrical.InstallationDetails;
import org.heatfloor.electrical.LeadColour;
import org.heatfloor.electrical.RoomUse;
import org.heatfloor.electrical.WetRoomZone;
import org.heatfloor.finding.Finding;
import org.heatfloor.plan.Plan;
import org.heatfloor.plan.Planner;
import org.heatfloor.routing.Effort;
import org.heatfloor.takeoff.MortarKind;
import org.heatfloor.takeoff.Notch;
import org.heatfloor.takeoff.TilePattern;
import org.heatfloor.thermal.BarefootFloor;
import org.heatfloor.thermal.SealMaterial;
import org.heatfloor.thermal.SurfaceLimit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code docs/room-files.md} says what is so. */
class RoomFilesChapterTest {

    @TempDir
    private Path folder;

    @Test
    void theSampleIsAGoodRoomFile() throws Exception {
        RoomFile room = RoomFileReader.read(write(sample()));
        assertThat(room.name()).isEqualTo("Porch");
    }

    @Test
    void theFaultShownIsToldSo() throws IOException {
        Path file = write(sample().replace(
                        "\"name\": \"P22\"",
                        "\"name\": \"P10\", \"conductors\": 2, \"length\": \"10 m\","
                                + "\"power\": \"110 W\", \"voltage\": \"230 V\", \"diameter\": \"5 mm\", \"coldLead\": \"3 m\"},"
                                + "{\"name\": \"P22\"")
                .replace("242 W", "275 V"));
        BadRoomFile bad = catchThrowableOfType(BadRoomFile.class, () -> RoomFileReader.read(file));
        assertThat(bad.faults()).hasSize(1);
        assertThat(chapter()).contains("\n" + bad.faults().get(0).line("room.json") + "\n");
    }

    @Test
    void everyWordOfAListStandsInTheChapter() throws IOException {
        Set<String> words = new TreeSet<>();
        words.addAll(RoomFileReader.words(KeepOutKind.values()).keySet());
        words.addAll(RoomFileReader.words(TilePattern.values()).keySet());
        words.addAll(RoomFileReader.words(Notch.values()).keySet());
        words.addAll(RoomFileReader.JOINT_RULES.keySet());
        words.addAll(RoomFileReader.words(MortarKind.values()).keySet());
        words.addAll(RoomFileReader.words(SealMaterial.values()).keySet());
        words.addAll(RoomFileReader.words(SurfaceLimit.values()).keySet());
        words.addAll(RoomFileReader.words(BarefootFloor.values()).keySet());
        words.addAll(HeatReader.DAYS.keySet());
        ElectricalCode.all().forEach(code -> words.add(code.name()));
        words.addAll(InstallationReader.ROOMS.keySet());
        words.addAll(InstallationReader.EMBEDDINGS.keySet());
        words.addAll(InstallationReader.COLOURS.keySet());
        words.addAll(InstallationReader.PLACES.keySet());
        words.addAll(InstallationReader.ZONES.keySet());
        for (String word : words) {
            assertThat(chapter()).contains("`" + word + "`");
        }
    }

    /** Without the installation the plan names what it could not judge; with it nothing is left. */
    @Test
    void theInstallationShownIsJudgedInFull() throws Exception {
        String told = with(block(1)).replace("\"coldLead\": \"3 m\"}", "\"coldLead\": \"3 m\", \"screen\": true}");
        assertThat(unchecked(sample())).singleElement().asString().contains("thermostat", "screen", "leakage");
        assertThat(unchecked(told)).isEmpty();
    }

    private List<String> unchecked(String room) throws Exception {
        Plan plan = Planner.plan(Briefs.of(RoomFileReader.read(write(room))), Effort.QUICK);
        assertThat(plan.status()).isEqualTo(Plan.Status.COMPLETE);
        return plan.findings().stream()
                .filter(f -> f.subject().equals("not checked"))
                .map(Finding::message)
                .toList();
    }

    @Test
    void everyKeyOfTheInstallationIsRead() throws Exception {
        RoomFile room = RoomFileReader.read(write(with(block(1).replaceFirst(
                        "\\}\\s*$",
                        ", \"embedding\": \"floor-covering\", \"leadColour\": \"red\", \"panelSet\": true,"
                                + " \"earthedMesh\": \"20 mm\", \"box\": {\"volume\": \"21 in³\", \"clamps\": true},"
                                + " \"circuitsApart\": true}")
                .replace("\"places\": []", "\"places\": [\"closet\", \"in-wall\"]"))));
        InstallationDetails told = room.installation();
        assertThat(told.control().orElseThrow().name()).isEqualTo("porch thermostat");
        assertThat(told.controlZone()).contains(WetRoomZone.OUTSIDE);
        assertThat(told.roomUse()).contains(RoomUse.OTHER);
        assertThat(told.embedding()).contains(Embedding.FLOOR_COVERING);
        assertThat(told.leadColour()).contains(LeadColour.RED);
        assertThat(told.places().orElseThrow()).containsExactlyInAnyOrder(CablePlace.CLOSET, CablePlace.IN_WALL);
        assertThat(told.panelSet()).isTrue();
        assertThat(told.circuitsApart()).isTrue();
        assertThat(told.internalClamps()).isTrue();
        assertThat(told.earthedMesh().map(RoomFileReader::millimetres)).contains(20.0);
        assertThat(told.boxVolume()).isPresent();
        assertThat(told.capacitance()).isPresent();
        assertThat(told.coldLeadConductor()).contains(ConductorSize.of("1 mm²"));
    }

    @Test
    void slipsInTheInstallationAreNamed() throws Exception {
        for (String[] slip : new String[][] {
            {"\"room\": \"other\"", "\"room\": \"garage\"", "installation.room", "kitchen"},
            {"\"places\": []", "\"places\": [\"roof\"]", "installation.places", "closet"},
            {"\"places\": []", "\"places\": \"closet\"", "installation.places", "a list of words"},
            {"\"1 mm²\"", "\"16 mm²\"", "installation", "cold lead conductor: 16 mm² was given"},
            {"\"1 mm²\"", "\"1 sq\"", "installation.coldLeadConductor", "'2.5 mm²'"},
            {"\"16 A\"", "\"16 V\"", "installation.thermostat.current", "A"},
            {"\"zone\"", "\"zones\"", "installation.thermostat.zones", "an unknown key"},
        }) {
            Path file = write(with(block(1).replace(slip[0], slip[1])));
            BadRoomFile bad = catchThrowableOfType(BadRoomFile.class, () -> RoomFileReader.read(file));
            assertThat(bad.faults()).as(slip[1]).singleElement().satisfies(fault -> assertThat(fault.line("room.json"))
                    .startsWith("room.json: " + slip[2] + ": ")
                    .contains(slip[3]));
        }
    }

    private static String with(String installation) throws IOException {
        return sample().replaceFirst("\\}\\s*$", Matcher.quoteReplacement("," + installation + "}"));
    }

    @Test
    void theLimitsNamedAreTheOnesInForce() throws IOException {
        assertThat(chapter())
                .contains("more than " + Math.round(RoomFileChecks.ON_WALL_METRES * 1_000) + " mm from")
                .contains(String.format(java.util.Locale.ROOT, "%,d bytes", JsonText.MOST_BYTES))
                .contains("nest " + JsonText.DEEPEST + " deep");
    }

    private Path write(String text) throws IOException {
        return Files.writeString(folder.resolve("room.json"), text);
    }

    private static String sample() throws IOException {
        return block(0);
    }

    private static String block(int number) throws IOException {
        Matcher block = Pattern.compile("```json\\n(.*?)```", Pattern.DOTALL).matcher(chapter());
        for (int i = 0; i <= number; i++) {
            assertThat(block.find()).isTrue();
        }
        return block.group(1);
    }

    private static String chapter() throws IOException {
        return Files.readString(Path.of("../docs/room-files.md"));
    }
}
