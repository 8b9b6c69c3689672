package org.heatfloor.finding;

/** How much a finding weighs. */
public enum Severity {
    /** Must not be built this way. */
    ERROR,
    /** May be built, but someone has to decide or check something first. */
    WARNING,
    /** Worth knowing; nothing to decide. */
    NOTE
}
