package org.heatfloor.examples;

/**
 * One thing wrong with a room file.
 *
 * @param key the path of the key, such as {@code cable.catalogue[3].length}
 * @param reading what was read and what is expected, in one sentence
 */
record Fault(String key, String reading) {

    private static final int LONGEST_SHOWN = 60;

    static Fault of(String key, String read, String expected) {
        return new Fault(key, read + " was read; " + expected + " is expected");
    }

    /** The fault as the one line a user sees: file, key, what was read, what is expected. */
    String line(String file) {
        return printable(file) + ": " + printable(key) + ": " + printable(reading);
    }

    /** A piece of a file in quotes, shortened. */
    static String quoted(String text) {
        return "'" + (text.length() <= LONGEST_SHOWN ? text : text.substring(0, LONGEST_SHOWN - 3) + "...") + "'";
    }

    /** The text without anything that could break the line or steer a terminal. */
    static String printable(String text) {
        StringBuilder safe = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            int type = Character.getType(c);
            boolean unsafe = Character.isISOControl(c)
                    || type == Character.FORMAT
                    || type == Character.LINE_SEPARATOR
                    || type == Character.PARAGRAPH_SEPARATOR
                    || type == Character.SURROGATE;
            if (unsafe) {
                safe.append(String.format("\\u%04X", c));
            } else {
                safe.appendCodePoint(c);
            }
        });
        return safe.toString();
    }
}
