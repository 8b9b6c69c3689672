package org.heatfloor.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.ThermalConductivity;
import org.heatfloor.quantity.Units;
import org.heatfloor.thermal.BarefootFloor;
import org.heatfloor.thermal.FloorComfort;
import org.heatfloor.thermal.FloorCover;
import org.heatfloor.thermal.LimitZone;
import org.heatfloor.thermal.SealMaterial;
import org.heatfloor.thermal.Tariff;
import org.heatfloor.thermal.Thermostat;
import org.heatfloor.thermal.WeeklySchedule;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a floor's heat and its use beyond layers and climate. Everything may be left out; the plan judges what is
 * given. Immutable.
 */
public final class HeatDetails {

    /** Nothing is known. */
    public static final HeatDetails NONE = builder().build();

    final Optional<Quantity<ThermalConductivity>> studConductivity;
    final Optional<Quantity<Temperature>> sheathLimit;
    final SealMaterial seal;
    final FloorComfort.Category comfort;
    final Optional<BarefootFloor> barefoot;
    final List<LimitZone> limitZones;
    final List<FloorCover> covers;
    final Optional<Quantity<Temperature>> floorTemperature;
    final Optional<WeeklySchedule> schedule;
    final Thermostat thermostat;
    final Optional<Tariff> tariff;
    final Optional<HeatingSeason> season;

    private HeatDetails(Builder b) {
        studConductivity = Optional.ofNullable(b.studConductivity);
        sheathLimit = Optional.ofNullable(b.sheathLimit);
        seal = b.seal;
        comfort = b.comfort;
        barefoot = Optional.ofNullable(b.barefoot);
        limitZones = List.copyOf(b.limitZones);
        covers = List.copyOf(b.covers);
        floorTemperature = Optional.ofNullable(b.floorTemperature);
        schedule = Optional.ofNullable(b.schedule);
        thermostat = b.thermostat;
        tariff = Optional.ofNullable(b.tariff);
        season = Optional.ofNullable(b.season);
    }

    /**
     * Starts with nothing known.
     *
     * @return a builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /** Gathers details. Not safe to share between threads; the details it builds are. */
    public static final class Builder {

        private @Nullable Quantity<ThermalConductivity> studConductivity;
        private @Nullable Quantity<Temperature> sheathLimit;
        private SealMaterial seal = SealMaterial.PETROLATUM;
        private FloorComfort.Category comfort = FloorComfort.Category.C;
        private @Nullable BarefootFloor barefoot;
        private final List<LimitZone> limitZones = new ArrayList<>();
        private final List<FloorCover> covers = new ArrayList<>();
        private @Nullable Quantity<Temperature> floorTemperature;
        private @Nullable WeeklySchedule schedule;
        private Thermostat thermostat = new Thermostat(Amounts.kelvins(1), true);
        private @Nullable Tariff tariff;
        private @Nullable HeatingSeason season;

        private Builder() {}

        /**
         * Conductivity of a stud of the membrane with what fills it. Left out, the heated layer is taken as uniform, and the
         * plan says how much warmer the floor could be.
         *
         * @param given 0.005 to 500 W/(m·K)
         * @return this builder
         * @throws IllegalArgumentException if it is out of range
         */
        public Builder studConductivity(Quantity<ThermalConductivity> given) {
            Si.within("stud conductivity", given, Units.WATT_PER_METRE_KELVIN, 0.005, 500);
            studConductivity = given;
            return this;
        }

        /**
         * Highest sheath temperature the cables are made for. Left out, the cable under a cover is not held against it.
         *
         * @param given the cable maker's figure, 30 °C to 300 °C
         * @return this builder
         * @throws IllegalArgumentException if it is out of range
         */
        public Builder sheathLimit(Quantity<Temperature> given) {
            Si.within("sheath limit", given, Units.CELSIUS, 30, 300);
            sheathLimit = given;
            return this;
        }

        /**
         * What the seals at toilet flanges are made of; left out, petrolatum, which softens first.
         *
         * @param given the material
         * @return this builder
         */
        public Builder seal(SealMaterial given) {
            seal = Objects.requireNonNull(given, "given");
            return this;
        }

        /**
         * How comfortable the floor is to be for people in indoor shoes; left out, category C.
         *
         * @param given the category
         * @return this builder
         */
        public Builder comfort(FloorComfort.Category given) {
            comfort = Objects.requireNonNull(given, "given");
            return this;
        }

        /**
         * Says that people walk barefoot, and on what; left out, bare feet are not judged.
         *
         * @param given the floor's material
         * @return this builder
         */
        public Builder barefoot(BarefootFloor given) {
            barefoot = Objects.requireNonNull(given, "given");
            return this;
        }

        /**
         * Adds a part of the floor with its own surface limit; the climate's limit holds for the rest.
         *
         * @param zone the part
         * @return this builder
         */
        public Builder limitZone(LimitZone zone) {
            limitZones.add(Objects.requireNonNull(zone, "zone"));
            return this;
        }

        /**
         * Adds a rug, a mat or furniture without feet that will lie on the floor.
         *
         * @param cover the cover
         * @return this builder
         */
        public Builder cover(FloorCover cover) {
            covers.add(Objects.requireNonNull(cover, "cover"));
            return this;
        }

        /**
         * How warm the floor is wanted; comfort is judged at it. Left out, the warmest period of the schedule.
         *
         * @param given mean surface temperature, 5 °C to 60 °C
         * @return this builder
         * @throws IllegalArgumentException if it is out of range
         */
        public Builder floorTemperature(Quantity<Temperature> given) {
            Si.within("floor temperature", given, Units.CELSIUS, 5, 60);
            floorTemperature = given;
            return this;
        }

        /**
         * When the floor is to be how warm. Left out, the plan tells no start and no energy of a week.
         *
         * @param given the schedule
         * @return this builder
         */
        public Builder schedule(WeeklySchedule given) {
            schedule = Objects.requireNonNull(given, "given");
            return this;
        }

        /**
         * The thermostat; left out, one of 1 K hysteresis that starts ahead (common practice, no source).
         *
         * @param given the thermostat
         * @return this builder
         */
        public Builder thermostat(Thermostat given) {
            thermostat = Objects.requireNonNull(given, "given");
            return this;
        }

        /**
         * What electricity costs. Left out, the plan tells no cost.
         *
         * @param given the tariff
         * @return this builder
         */
        public Builder tariff(Tariff given) {
            tariff = Objects.requireNonNull(given, "given");
            return this;
        }

        /**
         * A season through which the floor is to heat the room. Left out, the plan tells no energy of a season.
         *
         * @param given the season
         * @return this builder
         */
        public Builder season(HeatingSeason given) {
            season = Objects.requireNonNull(given, "given");
            return this;
        }

        /**
         * The details.
         *
         * @return the details
         */
        public HeatDetails build() {
            return new HeatDetails(this);
        }
    }
}
