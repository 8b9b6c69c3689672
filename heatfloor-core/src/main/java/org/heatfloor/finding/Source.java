package org.heatfloor.finding;

import java.util.Objects;

/**
 * What a figure or a limit rests on.
 *
 * @param kind whether a document was read, a document is recalled, the trade does it so, or it follows by calculation
 * @param text document, edition and clause; for common practice, what the practice is
 */
public record Source(Kind kind, String text) {

    /** The ways a figure can be known. */
    public enum Kind {
        /** Stated by a published document, named with edition and clause. */
        DOCUMENT,
        /** Recalled from a document that was not read for this library; check before relying on it. */
        FROM_MEMORY,
        /** A habit of the trade for which no authority was found. */
        COMMON_PRACTICE,
        /** Follows from geometry or arithmetic alone. */
        DERIVED,
        /** Stated by whoever wrote the brief. */
        BRIEF
    }

    /**
     * Checks the parts.
     *
     * @param kind whether a document was read, a document is recalled, the trade does it so, or it follows by calculation
     * @param text document, edition and clause; for common practice, what the practice is
     * @throws IllegalArgumentException if the text is blank
     */
    public Source {
        Objects.requireNonNull(kind, "kind");
        if (text.isBlank()) {
            throw new IllegalArgumentException(
                    "source text: blank; a document, a practice or a derivation is expected");
        }
    }

    /**
     * A published document.
     *
     * @param document document and edition, for example {@code "ISO 7730:2005"}
     * @param clause clause, table or equation, for example {@code "6.4"}
     * @return the source
     */
    public static Source document(String document, String clause) {
        return new Source(Kind.DOCUMENT, document + ", " + clause);
    }

    /**
     * A document recalled, not read.
     *
     * @param what document, edition and clause as far as remembered
     * @return the source
     */
    public static Source fromMemory(String what) {
        return new Source(Kind.FROM_MEMORY, what);
    }

    /**
     * A habit of the trade.
     *
     * @param what the habit in a few words
     * @return the source
     */
    public static Source commonPractice(String what) {
        return new Source(Kind.COMMON_PRACTICE, what);
    }

    /**
     * A result of geometry or arithmetic.
     *
     * @param what the argument in a few words
     * @return the source
     */
    public static Source derived(String what) {
        return new Source(Kind.DERIVED, what);
    }

    /**
     * A wish or limit stated in the brief itself.
     *
     * @param what which entry of the brief
     * @return the source
     */
    public static Source brief(String what) {
        return new Source(Kind.BRIEF, what);
    }

    /** One line for a reader, with the mark that belongs to the kind. */
    @Override
    public String toString() {
        return switch (kind) {
            case DOCUMENT -> text;
            case FROM_MEMORY -> "from memory: " + text;
            case COMMON_PRACTICE -> "common practice, no source: " + text;
            case DERIVED -> "derived: " + text;
            case BRIEF -> "brief: " + text;
        };
    }
}
