package ouzel.simulator.plant;

/** Something that can break on board while a rehearsal runs; it stays until it is cleared. */
public enum Fault {
    /** The arming plug is pulled: no actuator gets current. */
    PLUG_OUT,
    /** Weed lies over the water intake: hardly any flow, harder work. */
    WATER_INLET_BLOCKED,
    /** The tube to the jar is kinked: pressure climbs until the water pump stalls. */
    WATER_OUTLET_BLOCKED,
    /** Air is trapped in the water pump: it turns, breathes slowly and moves next to nothing. */
    WATER_AIRLOCK,
    /** A wire of the water pump is open. */
    WATER_PUMP_OPEN,
    /** The water pump's shaft is held. */
    WATER_PUMP_JAMMED,
    /** A joint between the water pump and the jar loses a third of the flow. */
    WATER_LINE_LEAK,
    /** The jar's level switch never closes. */
    LEVEL_SWITCH_STUCK_OPEN,
    /** The jar's level switch never opens. */
    LEVEL_SWITCH_STUCK_CLOSED,
    /** A wire of the air pump is open. */
    AIR_PUMP_OPEN,
    /** The bag's own valve was left closed. */
    BAG_VALVE_CLOSED,
    /** The bag has a hole. */
    BAG_LEAK,
    /** The tube fell off before the bag. */
    BAG_TUBE_OFF,
    /** The soil valve's plunger does not move. */
    VALVE_STUCK,
    /** The soil valve's plunger moves late and slowly. */
    VALVE_SLUGGISH,
    /** The soil valve's coil is open. */
    COIL_OPEN,
    /** Turns of the soil valve's coil are shorted: much current, no pull. */
    COIL_SHORTED,
    /** The probe stays where it is once it is out. */
    PROBE_STUCK_OUT,
    /** The line between regulator and valve leaks. */
    GAS_LEAK,
    /** Water stands in the electronics bay. */
    BAY_WET,
    /** The pack is worn: four times its resistance. */
    PACK_WORN,
    /** The tilt sensor repeats its last value. */
    TILT_FROZEN
}
