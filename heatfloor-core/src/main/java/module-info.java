/**
 * Engineering of electrically heated tile floors: what of a room may be heated, how a heating cable of fixed length is
 * routed over a studded uncoupling membrane, the circuit that feeds it, the temperatures that follow and the material to
 * buy.
 *
 * <p>Public methods take and return JSR 385 quantities; absolute temperatures and temperature differences are different
 * types. All values are immutable and safe to share between threads.
 */
module org.heatfloor.core {
    requires transitive java.measure;
    requires transitive org.locationtech.jts;
    requires hipparchus.core;
    requires hipparchus.fft;
    requires tech.units.indriya;
    requires static transitive org.jspecify;
    requires static org.apiguardian.api;

    exports org.heatfloor.area;
    exports org.heatfloor.electrical;
    exports org.heatfloor.finding;
    exports org.heatfloor.grid;
    exports org.heatfloor.plan;
    exports org.heatfloor.quantity;
    exports org.heatfloor.routing;
    exports org.heatfloor.takeoff;
    exports org.heatfloor.thermal;
}
