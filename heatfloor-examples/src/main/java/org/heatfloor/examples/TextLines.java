package org.heatfloor.examples;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines. */
final class TextLines {

    private TextLines() {}

    /** The text in lines of at most so many characters, broken between words. */
    static List<String> wrapped(String text, int columns) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            if (line.length() > 0 && line.length() + 1 + word.length() > columns) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
