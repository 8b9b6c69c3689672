package org.heatfloor.electrical;

/** A place the heating part of a cable lies in or passes, of those that codes speak of. */
public enum CablePlace {
    /** In a closet. */
    CLOSET(RuleTopic.USE_IN_CLOSET, "lies in a closet"),
    /** In the wall of a tub or shower. */
    TUB_OR_SHOWER_WALL(RuleTopic.USE_IN_TUB_WALL, "lies in the wall of a tub or shower"),
    /** Under a cabinet or built-in with no clearance to the floor. */
    UNDER_CABINET(RuleTopic.USE_UNDER_CABINET, "lies under a cabinet or built-in with no clearance to the floor"),
    /** Under a wall or through one. */
    UNDER_OR_THROUGH_WALL(RuleTopic.USE_UNDER_WALL, "passes under or through a wall"),
    /** In a wall other than that of a tub or shower. */
    IN_WALL(RuleTopic.WALLS, "lies in a wall"),
    /** In another room than the one it starts in. */
    ANOTHER_ROOM(RuleTopic.ROOM_OF_ORIGIN, "leaves the room it starts in"),
    /** Across an expansion joint, unprotected. */
    EXPANSION_JOINT(RuleTopic.EXPANSION_JOINT, "crosses an expansion joint without protection"),
    /** Across an expansion joint, with fittings made for it. */
    EXPANSION_JOINT_WITH_FITTING(RuleTopic.EXPANSION_JOINT, "crosses an expansion joint with fittings made for it");

    private final RuleTopic topic;
    private final String words;

    CablePlace(RuleTopic topic, String words) {
        this.topic = topic;
        this.words = words;
    }

    RuleTopic topic() {
        return topic;
    }

    String words() {
        return words;
    }
}
