package org.heatfloor.takeoff;

/** Which of the two families of cement tile mortar a mortar belongs to. */
public enum MortarKind {
    /** Without polymer, as ANSI A118.1. It dries between two faces that let no water through. */
    UNMODIFIED("unmodified"),
    /** With polymer, as ANSI A118.4 and A118.15. It holds on more bases and needs air to dry. */
    MODIFIED("modified");

    private final String text;

    MortarKind(String text) {
        this.text = text;
    }

    /** The word for a list. */
    @Override
    public String toString() {
        return text;
    }
}
