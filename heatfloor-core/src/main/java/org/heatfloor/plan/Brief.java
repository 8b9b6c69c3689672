package org.heatfloor.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.heatfloor.area.Door;
import org.heatfloor.area.JointRule;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.PriorityZone;
import org.heatfloor.area.Room;
import org.heatfloor.area.TradeLength;
import org.heatfloor.electrical.HeatingCable;
import org.heatfloor.electrical.InstallationDetails;
import org.heatfloor.electrical.Supply;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.takeoff.Bedding;
import org.heatfloor.takeoff.TileSpec;
import org.heatfloor.thermal.BuildUp;
import org.heatfloor.thermal.Climate;
import org.jspecify.annotations.Nullable;

/**
 * Everything the planner is told about one room. Room, wall clearance, membrane, cable rules, catalogue and supply are
 * required; what else is left out is left out of the plan, which says so.
 */
public final class Brief {

    /** One percent of the length; of this order, common practice, no source. */
    private static final double USUAL_TOLERANCE = 0.01;

    final String name;
    final Room room;
    final TradeLength wallClearance;
    final List<KeepOut> keepOuts;
    final List<Door> doors;
    final List<PriorityZone> priorityZones;
    final Membrane membrane;
    final Optional<StudLattice> lattice;
    final CableRules rules;
    final List<HeatingCable> catalogue;
    final Supply supply;
    private final InstallationDetails installation;
    final Optional<BuildUp> buildUp;
    final Optional<Climate> climate;
    final HeatDetails heat;
    final Optional<TileSpec> tile;
    final Optional<Bedding> bedding;
    final Optional<JointRule> jointRule;
    final Optional<Quantity<Length>> sheetSlip;
    private final double lengthTolerance;

    private Brief(Builder b) {
        name = b.name;
        room = required("room", b.room);
        wallClearance = required("wall clearance", b.wallClearance);
        membrane = required("membrane", b.membrane);
        rules = required("cable rules", b.rules);
        supply = required("supply", b.supply);
        installation = b.installation;
        keepOuts = List.copyOf(b.keepOuts);
        doors = List.copyOf(b.doors);
        priorityZones = List.copyOf(b.priorityZones);
        catalogue = List.copyOf(b.catalogue);
        lattice = Optional.ofNullable(b.lattice);
        buildUp = Optional.ofNullable(b.buildUp);
        climate = Optional.ofNullable(b.climate);
        heat = b.heat;
        tile = Optional.ofNullable(b.tile);
        bedding = Optional.ofNullable(b.bedding);
        jointRule = Optional.ofNullable(b.jointRule);
        sheetSlip = Optional.ofNullable(b.sheetSlip);
        lengthTolerance = b.lengthTolerance;
        if (catalogue.isEmpty()) {
            throw new IllegalArgumentException("catalogue: no cable was given; at least one is expected");
        }
        distinct("cable", catalogue.stream().map(HeatingCable::name).toList());
        distinct("keep-out", keepOuts.stream().map(KeepOut::name).toList());
        room.requireInside(keepOuts);
        room.requireOnWall("start", rules.start(), Units.METRE, keepOuts);
        if (lattice.isPresent()) {
            sameStuds(membrane, lattice.orElseThrow());
        }
        double least = Si.in("least spacing", rules.minSpacing().with(membrane.studPitch()), Units.METRE);
        double most = Si.in("greatest spacing", rules.maxSpacing().with(membrane.studPitch()), Units.METRE);
        double pitch = Si.in("stud pitch", membrane.studPitch(), Units.METRE);
        if (!(least >= pitch * (1 - 1e-9))) {
            throw new IllegalArgumentException("least spacing: " + rules.minSpacing()
                    + " was given; at least one stud pitch of " + membrane.studPitch() + " is expected");
        }
        if (!(most >= least * (1 - 1e-9))) {
            throw new IllegalArgumentException("greatest spacing: " + rules.maxSpacing()
                    + " was given; at least the least spacing of " + rules.minSpacing() + " is expected");
        }
    }

    private static <T> T required(String what, @Nullable T value) {
        if (value == null) {
            throw new IllegalArgumentException(what + ": nothing was given; it is required");
        }
        return value;
    }

    private static void sameStuds(Membrane membrane, StudLattice lattice) {
        double pitch = Si.in("stud pitch", membrane.studPitch(), Units.METRE);
        double diameter = Si.in("stud diameter", membrane.studDiameter(), Units.METRE);
        if (!(Math.abs(Si.in("pitch", lattice.pitch(), Units.METRE) - pitch) <= 1e-9
                && Math.abs(Si.in("diameter", lattice.studDiameter(), Units.METRE) - diameter) <= 1e-9)) {
            throw new IllegalArgumentException("lattice: studs of " + lattice.studDiameter() + " every "
                    + lattice.pitch() + " were given; the membrane's, " + membrane.studDiameter() + " every "
                    + membrane.studPitch() + ", are expected");
        }
    }

    private static void distinct(String what, List<String> names) {
        Set<String> seen = new HashSet<>();
        for (String n : names) {
            if (!seen.add(n)) {
                throw new IllegalArgumentException(
                        what + " name: '" + n + "' was given twice; each name once is expected");
            }
        }
    }

    /**
     * Starts a brief.
     *
     * @param name the room's name
     * @return a builder
     */
    public static Builder builder(String name) {
        return new Builder(name);
    }

    /**
     * The room's name.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /** What is known of the installation, with the least spacing of the cable rules where no other is stated. */
    InstallationDetails installation() {
        return installation.runSpacing().isPresent()
                ? installation
                : installation.toBuilder()
                        .runSpacing(rules.minSpacing().with(membrane.studPitch()))
                        .build();
    }

    /** By what share of its length a cable may be longer or shorter than stated. */
    double lengthTolerance() {
        return lengthTolerance;
    }

    /** Gathers a brief. Not safe to share between threads; the brief it builds is. */
    public static final class Builder {

        private final String name;
        private @Nullable Room room;
        private @Nullable TradeLength wallClearance;
        private final List<KeepOut> keepOuts = new ArrayList<>();
        private final List<Door> doors = new ArrayList<>();
        private final List<PriorityZone> priorityZones = new ArrayList<>();
        private @Nullable Membrane membrane;
        private @Nullable StudLattice lattice;
        private @Nullable CableRules rules;
        private final List<HeatingCable> catalogue = new ArrayList<>();
        private @Nullable Supply supply;
        private InstallationDetails installation = InstallationDetails.NONE;
        private @Nullable BuildUp buildUp;
        private @Nullable Climate climate;
        private HeatDetails heat = HeatDetails.NONE;
        private @Nullable TileSpec tile;
        private @Nullable Bedding bedding;
        private @Nullable JointRule jointRule;
        private @Nullable Quantity<Length> sheetSlip;
        private double lengthTolerance = USUAL_TOLERANCE;

        private Builder(String name) {
            if (name.isBlank()) {
                throw new IllegalArgumentException("name: blank was given; a name is expected");
            }
            this.name = name;
        }

        /**
         * The room and the clearance of the cable's centre line from its walls and columns.
         *
         * @param floor the floor
         * @param clearance from walls and columns
         * @return this builder
         */
        public Builder room(Room floor, TradeLength clearance) {
            room = Objects.requireNonNull(floor, "floor");
            wallClearance = Objects.requireNonNull(clearance, "clearance");
            return this;
        }

        /**
         * Adds a place without cable.
         *
         * @param keepOut the place
         * @return this builder
         */
        public Builder keepOut(KeepOut keepOut) {
            keepOuts.add(Objects.requireNonNull(keepOut, "keepOut"));
            return this;
        }

        /**
         * Adds a door.
         *
         * @param door the door
         * @return this builder
         */
        public Builder door(Door door) {
            doors.add(Objects.requireNonNull(door, "door"));
            return this;
        }

        /**
         * Adds a zone where people stand.
         *
         * @param zone the zone
         * @return this builder
         */
        public Builder priorityZone(PriorityZone zone) {
            priorityZones.add(Objects.requireNonNull(zone, "zone"));
            return this;
        }

        /**
         * The membrane; the planner chooses how its lattice lies.
         *
         * @param given the membrane
         * @return this builder
         */
        public Builder membrane(Membrane given) {
            membrane = Objects.requireNonNull(given, "given");
            return this;
        }

        /**
         * How the lattice lies, where the membrane is down already.
         *
         * @param given the lattice
         * @return this builder
         */
        public Builder lattice(StudLattice given) {
            lattice = Objects.requireNonNull(given, "given");
            return this;
        }

        /**
         * How the cable is to be laid.
         *
         * @param given the rules
         * @return this builder
         */
        public Builder rules(CableRules given) {
            rules = Objects.requireNonNull(given, "given");
            return this;
        }

        /**
         * The cables to choose from.
         *
         * @param cables at least one
         * @return this builder
         */
        public Builder catalogue(List<HeatingCable> cables) {
            catalogue.addAll(cables);
            return this;
        }

        /**
         * The supply.
         *
         * @param given the supply
         * @return this builder
         */
        public Builder supply(Supply given) {
            supply = Objects.requireNonNull(given, "given");
            return this;
        }

        /**
         * What is known of the electrical installation beyond the supply; what is left out is named in the plan as not
         * judged.
         *
         * @param details what is known; spacing and heated area are taken from the plan where they are left out
         * @return this builder
         */
        public Builder installation(InstallationDetails details) {
            installation = Objects.requireNonNull(details, "details");
            return this;
        }

        /**
         * The layers and the climate; without them the plan has no temperatures.
         *
         * @param layers the build-up
         * @param conditions the climate
         * @return this builder
         */
        public Builder heat(BuildUp layers, Climate conditions) {
            buildUp = Objects.requireNonNull(layers, "layers");
            climate = Objects.requireNonNull(conditions, "conditions");
            return this;
        }

        /**
         * What is known of the heat beyond layers and climate.
         *
         * @param details what is known
         * @return this builder
         */
        public Builder heatDetails(HeatDetails details) {
            heat = Objects.requireNonNull(details, "details");
            return this;
        }

        /**
         * The tile.
         *
         * @param given the tile
         * @return this builder
         */
        public Builder tile(TileSpec given) {
            tile = Objects.requireNonNull(given, "given");
            return this;
        }

        /**
         * The mortar beds.
         *
         * @param given the beds
         * @return this builder
         */
        public Builder bedding(Bedding given) {
            bedding = Objects.requireNonNull(given, "given");
            return this;
        }

        /**
         * How large a bay between movement joints may be. Left out, the rule for heated floors of the country whose
         * electrical code is in force.
         *
         * @param given the rule
         * @return this builder
         */
        public Builder jointRule(JointRule given) {
            jointRule = Objects.requireNonNull(given, "given");
            return this;
        }

        /**
         * How far a sheet of the membrane slipped along its seam, where it is down already; the plan then says what that
         * costs at each seam. Left out, the plan says what a slip would cost at its worst.
         *
         * @param measured the slip, 0 m to 10 m
         * @return this builder
         * @throws IllegalArgumentException if it is out of range
         */
        public Builder sheetSlip(Quantity<Length> measured) {
            Si.within("sheet slip", measured, Units.METRE, 0, 10);
            sheetSlip = measured;
            return this;
        }

        /**
         * By what share of its length a cable may be longer or shorter than stated; 1 % where it is not given (common
         * practice, no source). That much room is kept for a longer cable.
         *
         * @param share of the length, from 0 to 10 %
         * @return this builder
         * @throws IllegalArgumentException if the share is out of range
         */
        public Builder lengthTolerance(Quantity<Dimensionless> share) {
            lengthTolerance = Si.within("length tolerance", share, Units.ONE, 0, 0.1);
            return this;
        }

        /**
         * The brief.
         *
         * @return the brief
         * @throws IllegalArgumentException if something required is missing or figures contradict each other; the message
         *     names it
         */
        public Brief build() {
            return new Brief(this);
        }
    }
}
