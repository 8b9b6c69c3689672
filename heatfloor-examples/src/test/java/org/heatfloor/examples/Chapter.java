package org.heatfloor.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Tables in the chapters of the documentation that a test computes. */
final class Chapter {

    private Chapter() {}

    /**
     * Holds a chapter against a computed table and the paragraphs that follow it. With {@code -Dheatfloor.rewrite=true} they
     * are written into the chapter first, in place of as many paragraphs, from the one that begins with the same line.
     */
    static void shows(String name, String computed) throws IOException {
        Path file = Path.of("..", "docs", name);
        String text = computed.replace("\r\n", "\n").strip();
        String chapter = Files.readString(file);
        if (Boolean.getBoolean("heatfloor.rewrite")) {
            int begin = chapter.indexOf(text.lines().findFirst().orElseThrow() + "\n");
            int end = begin;
            for (int paragraph = 0; paragraph < text.split("\n\n").length; paragraph++) {
                end = chapter.indexOf("\n\n", end + 2);
            }
            chapter = chapter.substring(0, begin) + text + chapter.substring(end);
            Files.writeString(file, chapter);
        }
        assertThat(chapter + "\n").contains("\n\n" + text + "\n\n");
    }
}
