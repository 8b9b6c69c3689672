package org.heatfloor.examples;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The folder the results go to. Checked before the work, written after it: all files or none. */
final class Results {

    private final Path folder;

    /** @throws BadRoomFile if the folder cannot be written */
    Results(Path folder) throws BadRoomFile {
        this.folder = folder;
        Path there = folder.toAbsolutePath();
        while (there != null && !Files.exists(there)) {
            there = there.getParent();
        }
        if (there == null || !Files.isDirectory(there) || !Files.isWritable(there)) {
            throw refused(there != null && Files.isRegularFile(there) ? "a file" : "a place that cannot be written");
        }
    }

    /** @param files contents by name */
    void write(Map<String, String> files) throws BadRoomFile {
        Map<Path, Path> written = new LinkedHashMap<>();
        try {
            Files.createDirectories(folder);
            for (Map.Entry<String, String> file : files.entrySet()) {
                Path draft = folder.resolve(file.getKey() + ".part");
                written.put(draft, folder.resolve(file.getKey()));
                Files.writeString(draft, file.getValue(), StandardCharsets.UTF_8);
            }
            for (Map.Entry<Path, Path> file : written.entrySet()) {
                Files.move(file.getKey(), file.getValue(), StandardCopyOption.REPLACE_EXISTING);
            }
        } catch (IOException e) {
            List<Path> drafts = new ArrayList<>(written.keySet());
            drafts.forEach(draft -> draft.toFile().delete());
            throw refused("a place that cannot be written (" + e.getClass().getSimpleName() + ")");
        }
    }

    private BadRoomFile refused(String read) {
        return new BadRoomFile(
                "OUTDIR", Fault.quoted(folder.toString()) + ", " + read + ",", "a folder that can be written");
    }
}
