package org.heatfloor.takeoff;

/** The shape of a trowel's notches. */
public enum Notch {
    /** Square or rectangular. */
    SQUARE {
        @Override
        double areaSquareMetres(double width, double depth) {
            return width * depth;
        }
    },
    /** A rectangle that ends in a half circle as wide as the notch. */
    U {
        @Override
        double areaSquareMetres(double width, double depth) {
            return width * (depth - width / 2) + Math.PI * width * width / 8;
        }
    },
    /** A triangle. */
    V {
        @Override
        double areaSquareMetres(double width, double depth) {
            return width * depth / 2;
        }
    };

    /** Area of one notch seen square on, for width and depth in metres. Derived geometry. */
    abstract double areaSquareMetres(double width, double depth);
}
