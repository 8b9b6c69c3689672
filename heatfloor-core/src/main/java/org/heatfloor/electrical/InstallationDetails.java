package org.heatfloor.electrical;

import java.util.EnumSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.heatfloor.quantity.LinearCapacitance;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.jspecify.annotations.Nullable;

/**
 * What is known of an installation beyond its supply and its cables. Everything may be left out; a {@link CircuitDesign}
 * judges what is given and names what it could not judge. Immutable.
 */
public final class InstallationDetails {

    /** Nothing is known. */
    public static final InstallationDetails NONE = builder().build();

    private final Builder given;

    private InstallationDetails(Builder given) {
        this.given = given.copy();
    }

    /**
     * Starts with nothing known.
     *
     * @return a builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * A builder that starts from these details.
     *
     * @return a builder
     */
    public Builder toBuilder() {
        return given.copy();
    }

    /**
     * The thermostat or contactor every circuit has.
     *
     * @return the device, if given
     */
    public Optional<ControlDevice> control() {
        return Optional.ofNullable(given.control);
    }

    /**
     * Where that device stands.
     *
     * @return the zone, if given
     */
    public Optional<WetRoomZone> controlZone() {
        return Optional.ofNullable(given.controlZone);
    }

    /**
     * What the room is used for.
     *
     * @return the use, if given
     */
    public Optional<RoomUse> roomUse() {
        return Optional.ofNullable(given.roomUse);
    }

    /**
     * In concrete or under a floor covering.
     *
     * @return the embedding, if given
     */
    public Optional<Embedding> embedding() {
        return Optional.ofNullable(given.embedding);
    }

    /**
     * Least spacing of the runs, centre to centre.
     *
     * @return the spacing, if given
     */
    public Optional<Quantity<Length>> runSpacing() {
        return Optional.ofNullable(given.runSpacing);
    }

    /**
     * Area the cables heat.
     *
     * @return the area, if given
     */
    public Optional<Quantity<Area>> heatedArea() {
        return Optional.ofNullable(given.heatedArea);
    }

    /**
     * Whether the cables come as listed heating panel sets (fixed to a carrier), not as loose cable.
     *
     * @return true for panel sets; false unless it was stated
     */
    public boolean panelSet() {
        return given.panelSet;
    }

    /**
     * Colour of the cold leads.
     *
     * @return the colour, if given
     */
    public Optional<LeadColour> leadColour() {
        return Optional.ofNullable(given.leadColour);
    }

    /**
     * Places the heating part lies in or passes.
     *
     * @return the places, if given; an empty set says that it keeps clear of all of them
     */
    public Optional<Set<CablePlace>> places() {
        return Optional.ofNullable(given.places);
    }

    /**
     * Opening of an earthed metal mesh that covers cables without a screen.
     *
     * @return the opening, if there is such a mesh
     */
    public Optional<Quantity<Length>> earthedMesh() {
        return Optional.ofNullable(given.earthedMesh);
    }

    /**
     * Capacitance of core to screen per length.
     *
     * @return the capacitance, if given
     */
    public Optional<Quantity<LinearCapacitance>> capacitance() {
        return Optional.ofNullable(given.capacitance);
    }

    /**
     * Size of the cold leads' conductors.
     *
     * @return the size, if given
     */
    public Optional<ConductorSize> coldLeadConductor() {
        return Optional.ofNullable(given.coldLeadConductor);
    }

    /**
     * Volume of the box in which feeder, cold leads and control meet.
     *
     * @return the volume, if given
     */
    public Optional<Quantity<Volume>> boxVolume() {
        return Optional.ofNullable(given.boxVolume);
    }

    /**
     * Whether that box has internal cable clamps.
     *
     * @return true if so; false unless it was stated
     */
    public boolean internalClamps() {
        return given.internalClamps;
    }

    /**
     * Whether the circuits of this design run by ways of their own, so that they do not warm each other.
     *
     * @return true if so; false unless it was stated
     */
    public boolean circuitsApart() {
        return given.circuitsApart;
    }

    /** Gathers details. Not safe to share between threads; what it builds is. */
    public static final class Builder {

        private @Nullable ControlDevice control;
        private @Nullable WetRoomZone controlZone;
        private @Nullable RoomUse roomUse;
        private @Nullable Embedding embedding;
        private @Nullable Quantity<Length> runSpacing;
        private @Nullable Quantity<Area> heatedArea;
        private boolean panelSet;
        private @Nullable LeadColour leadColour;
        private @Nullable Set<CablePlace> places;
        private @Nullable Quantity<Length> earthedMesh;
        private @Nullable Quantity<LinearCapacitance> capacitance;
        private @Nullable ConductorSize coldLeadConductor;
        private @Nullable Quantity<Volume> boxVolume;
        private boolean internalClamps;
        private boolean circuitsApart;

        private Builder() {}

        private Builder copy() {
            Builder copy = new Builder();
            copy.control = control;
            copy.controlZone = controlZone;
            copy.roomUse = roomUse;
            copy.embedding = embedding;
            copy.runSpacing = runSpacing;
            copy.heatedArea = heatedArea;
            copy.panelSet = panelSet;
            copy.leadColour = leadColour;
            copy.places = places;
            copy.earthedMesh = earthedMesh;
            copy.capacitance = capacitance;
            copy.coldLeadConductor = coldLeadConductor;
            copy.boxVolume = boxVolume;
            copy.internalClamps = internalClamps;
            copy.circuitsApart = circuitsApart;
            return copy;
        }

        /**
         * The thermostat or contactor every circuit has.
         *
         * @param device the device
         * @return this
         */
        public Builder control(ControlDevice device) {
            control = Objects.requireNonNull(device, "device");
            return this;
        }

        /**
         * Where the thermostat or contactor stands.
         *
         * @param zone the zone
         * @return this
         */
        public Builder controlZone(WetRoomZone zone) {
            controlZone = Objects.requireNonNull(zone, "zone");
            return this;
        }

        /**
         * What the room is used for.
         *
         * @param use the use
         * @return this
         */
        public Builder roomUse(RoomUse use) {
            roomUse = Objects.requireNonNull(use, "use");
            return this;
        }

        /**
         * In concrete or under a floor covering.
         *
         * @param where which
         * @return this
         */
        public Builder embedding(Embedding where) {
            embedding = Objects.requireNonNull(where, "where");
            return this;
        }

        /**
         * Least spacing of the runs, centre to centre.
         *
         * @param spacing above 0
         * @return this
         * @throws IllegalArgumentException if it is not above 0
         */
        public Builder runSpacing(Quantity<Length> spacing) {
            Si.positive("run spacing", spacing, Units.METRE);
            runSpacing = spacing;
            return this;
        }

        /**
         * Area the cables heat, all of them together.
         *
         * @param area above 0
         * @return this
         * @throws IllegalArgumentException if it is not above 0
         */
        public Builder heatedArea(Quantity<Area> area) {
            Si.positive("heated area", area, Units.SQUARE_METRE);
            heatedArea = area;
            return this;
        }

        /**
         * Says that the cables come as listed heating panel sets, fixed to a carrier.
         *
         * @return this
         */
        public Builder panelSet() {
            panelSet = true;
            return this;
        }

        /**
         * Colour of the cold leads.
         *
         * @param colour the colour
         * @return this
         */
        public Builder leadColour(LeadColour colour) {
            leadColour = Objects.requireNonNull(colour, "colour");
            return this;
        }

        /**
         * Places the heating part lies in or passes.
         *
         * @param passed the places; none says that it keeps clear of all of them
         * @return this
         */
        public Builder places(CablePlace... passed) {
            Set<CablePlace> set = EnumSet.noneOf(CablePlace.class);
            set.addAll(Set.of(passed));
            places = java.util.Collections.unmodifiableSet(set);
            return this;
        }

        /**
         * An earthed metal mesh that covers cables without a screen.
         *
         * @param opening width of its openings, above 0
         * @return this
         * @throws IllegalArgumentException if it is not above 0
         */
        public Builder earthedMesh(Quantity<Length> opening) {
            Si.positive("mesh opening", opening, Units.METRE);
            earthedMesh = opening;
            return this;
        }

        /**
         * Capacitance of core to screen per length, for the leakage budget.
         *
         * @param perLength above 0
         * @return this
         * @throws IllegalArgumentException if it is not above 0
         */
        public Builder capacitance(Quantity<LinearCapacitance> perLength) {
            Si.positive("capacitance", perLength, Units.FARAD_PER_METRE);
            capacitance = perLength;
            return this;
        }

        /**
         * Size of the cold leads' conductors, for their voltage drop and for box fill.
         *
         * @param size the size, 0.5 mm² to 10 mm² or 14 AWG to 4 AWG
         * @return this
         * @throws IllegalArgumentException if its resistance is in no table
         */
        public Builder coldLeadConductor(ConductorSize size) {
            ColdLeadDrop.conductorResistance(size);
            coldLeadConductor = size;
            return this;
        }

        /**
         * The box in which feeder, cold leads and control meet.
         *
         * @param volume its volume with marked extensions, above 0
         * @param clamps whether it has internal cable clamps
         * @return this
         * @throws IllegalArgumentException if the volume is not above 0
         */
        public Builder box(Quantity<Volume> volume, boolean clamps) {
            Si.positive("box volume", volume, Units.CUBIC_INCH);
            boxVolume = volume;
            internalClamps = clamps;
            return this;
        }

        /**
         * Says that the circuits run by ways of their own, so that they do not warm each other.
         *
         * @return this
         */
        public Builder circuitsApart() {
            circuitsApart = true;
            return this;
        }

        /**
         * The details.
         *
         * @return the details
         */
        public InstallationDetails build() {
            return new InstallationDetails(this);
        }
    }
}
