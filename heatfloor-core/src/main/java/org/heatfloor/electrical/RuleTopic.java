package org.heatfloor.electrical;

/** What a rule of an electrical code is about. */
public enum RuleTopic {
    /** Share of the load the branch-circuit conductor must carry. */
    CONTINUOUS_LOAD_CONDUCTOR,
    /** Share of the load the protective device must be rated for. */
    CONTINUOUS_LOAD_DEVICE,
    /** How the protective device's rating stands to the conductor's. */
    DEVICE_AGAINST_CONDUCTOR,
    /** Greatest protective device for small conductors. */
    SMALL_CONDUCTOR,
    /** The standard ratings of protective devices. */
    PROTECTIVE_RATINGS,
    /** Least rating of a protective device used for a heating circuit. */
    LEAST_DEVICE,
    /** The table of current-carrying capacities. */
    AMPACITY_TABLE,
    /** The table of corrections for ambient temperature. */
    AMBIENT_TABLE,
    /** The table of adjustments for conductors or circuits laid together. */
    GROUPING_TABLE,
    /** Current a protective device carries without opening, as a share of its rating. */
    DEVICE_HOLDS,
    /** Temperature column of the ampacity table that the terminals allow. */
    TERMINALS,
    /** Greatest rating of a circuit with two or more heating outlets. */
    SEVERAL_OUTLETS,
    /** Greatest protective device for a resistance element. */
    ELEMENT_PROTECTION,
    /** Current above which heating equipment is subdivided. */
    SUBDIVISION,
    /** Voltage drop of the circuit, as a share of the supply voltage. */
    VOLTAGE_DROP,
    /** Voltage drop of feeder and circuit together, as a share of the supply voltage. */
    VOLTAGE_DROP_TOTAL,
    /** Rated residual current (trip level) of the residual current device (American: GFCI). */
    RESIDUAL_CURRENT,
    /** Standing leakage as a share of the rated residual current. */
    LEAKAGE_SHARE,
    /** How the heating is disconnected. */
    DISCONNECTION,
    /** Rating of the means of disconnection, as a share of the load. */
    DISCONNECTION_RATING,
    /** When a thermostat may serve as the means of disconnection. */
    THERMOSTAT_DISCONNECTION,
    /** Least length of a factory-made cold lead. */
    COLD_LEAD_LENGTH,
    /** Colour of cold leads by voltage. */
    COLD_LEAD_COLOUR,
    /** Least free length of the cold lead in its box. */
    FREE_LEAD,
    /** Cutting the surplus of a cold lead. */
    COLD_LEAD_SURPLUS,
    /** Protection of leads where they leave the floor. */
    LEADS_LEAVING_FLOOR,
    /** Greatest power per length of cable in concrete. */
    LINEAR_POWER,
    /** Least spacing of cable runs in concrete. */
    RUN_SPACING,
    /** Cable beside metal embedded in the floor. */
    METAL_IN_FLOOR,
    /** Greatest power per heated area of a panel set in concrete. */
    PANEL_DENSITY_IN_CONCRETE,
    /** Greatest power per heated area of a panel set under a floor covering. */
    PANEL_DENSITY_UNDER_COVERING,
    /** Whether a cable may leave the room it starts in. */
    ROOM_OF_ORIGIN,
    /** Cable in a closet. */
    USE_IN_CLOSET,
    /** Cable in the wall of a tub or shower. */
    USE_IN_TUB_WALL,
    /** Cable under a cabinet or built-in with no clearance to the floor. */
    USE_UNDER_CABINET,
    /** Cable under or through a wall. */
    USE_UNDER_WALL,
    /** Crossing of movement and expansion joints. */
    EXPANSION_JOINT,
    /** Changing the length of a cable. */
    LENGTH_ALTERATION,
    /** Ground-fault protection of cable in concrete floors. */
    GROUND_FAULT_IN_CONCRETE,
    /** Ground-fault protection of cable under a floor covering. */
    GROUND_FAULT_UNDER_COVERING,
    /** Screen, braid or mesh and its connection to the protective conductor. */
    SCREEN,
    /** Screen, sheath or mesh of floor heating in a room with bath or shower. */
    SCREEN_IN_BATHROOM,
    /** Inspection before the cable is covered. */
    INSPECTION,
    /** Listing of the cable. */
    LISTING,
    /** Marking of the cable. */
    MARKING,
    /** Label at the distribution board. */
    BOARD_LABEL,
    /** Temperature of the floor surface people touch. */
    SURFACE_TEMPERATURE,
    /** Temperature in the zone of the heating unit. */
    UNIT_TEMPERATURE,
    /** Floor heating in a room with bath or shower. */
    BATHROOM,
    /** Cable in walls. */
    WALLS,
    /** Test voltage of the insulation test. */
    INSULATION_TEST_VOLTAGE,
    /** Least insulation resistance. */
    INSULATION_RESISTANCE,
    /** Free conductor at a box. */
    FREE_CONDUCTOR,
    /** The box fill table. */
    BOX_FILL,
    /** Whether several grounding conductors count as one in a box. */
    BOX_FILL_GROUNDING,
    /** Allowance of a terminal block in a box. */
    BOX_FILL_TERMINAL_BLOCK,
    /** Nominal voltages of the code. */
    NOMINAL_VOLTAGES
}
