package org.heatfloor.takeoff;

/** How the studs of a membrane stand to each other. */
public enum StudGrid {
    /** In rows and columns; a cell is the pitch squared. */
    SQUARE {
        @Override
        double cellSquareMetres(double pitchMetres) {
            return pitchMetres * pitchMetres;
        }
    },
    /** Each row shifted by half a pitch, all neighbours one pitch apart; a cell is the pitch squared times √3/2. */
    TRIANGULAR {
        @Override
        double cellSquareMetres(double pitchMetres) {
            return pitchMetres * pitchMetres * Math.sqrt(3) / 2;
        }
    };

    /** Floor of one stud. Derived geometry. */
    abstract double cellSquareMetres(double pitchMetres);
}
