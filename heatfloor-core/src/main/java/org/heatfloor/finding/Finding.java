package org.heatfloor.finding;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;

/**
 * One judgement: something was compared with a limit, or is worth saying.
 *
 * @param severity how much it weighs
 * @param subject the thing judged, by the name its owner gave it (a cable, a keep-out, a wall, a layer)
 * @param message one sentence a fitter can act on
 * @param value the figure found, where there is one
 * @param limit the limit it was held against, where there is one
 * @param source what the limit rests on
 */
public record Finding(
        Severity severity,
        String subject,
        String message,
        Optional<Quantity<?>> value,
        Optional<Quantity<?>> limit,
        Source source) {

    /**
     * Checks the parts.
     *
     * @param severity how much it weighs
     * @param subject the thing judged, by the name its owner gave it (a cable, a keep-out, a wall, a layer)
     * @param message one sentence a fitter can act on
     * @param value the figure found, where there is one
     * @param limit the limit it was held against, where there is one
     * @param source what the limit rests on
     * @throws IllegalArgumentException if subject or message is blank
     */
    public Finding {
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(limit, "limit");
        Objects.requireNonNull(source, "source");
        if (subject.isBlank() || message.isBlank()) {
            throw new IllegalArgumentException("finding: subject '" + subject + "' and message '" + message
                    + "' were given; neither may be blank");
        }
    }

    /**
     * A finding without figures.
     *
     * @param severity how much it weighs
     * @param subject the thing judged
     * @param message one sentence
     * @param source what it rests on
     * @return the finding
     */
    public static Finding of(Severity severity, String subject, String message, Source source) {
        return new Finding(severity, subject, message, Optional.empty(), Optional.empty(), source);
    }

    /**
     * A finding with the figure found and the limit it was held against.
     *
     * @param severity how much it weighs
     * @param subject the thing judged
     * @param message one sentence
     * @param value the figure found
     * @param limit the limit
     * @param source what the limit rests on
     * @return the finding
     */
    public static Finding of(
            Severity severity, String subject, String message, Quantity<?> value, Quantity<?> limit, Source source) {
        return new Finding(severity, subject, message, Optional.of(value), Optional.of(limit), source);
    }

    /**
     * A finding with a figure but no limit.
     *
     * @param severity how much it weighs
     * @param subject the thing judged
     * @param message one sentence
     * @param value the figure found
     * @param source what it rests on
     * @return the finding
     */
    public static Finding withValue(
            Severity severity, String subject, String message, Quantity<?> value, Source source) {
        return new Finding(severity, subject, message, Optional.of(value), Optional.empty(), source);
    }

    /**
     * Whether this finding forbids building as planned.
     *
     * @return true for {@link Severity#ERROR}
     */
    public boolean isError() {
        return severity == Severity.ERROR;
    }
}
