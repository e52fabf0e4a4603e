package ouzel.simulator.controller;

import ouzel.protocol.message.Event;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.SamplerState;

/**
 * How a draw or a stroke ended.
 *
 * @param state what the sampler is from now on: DONE, SPENT or FAULT
 * @param outcome the last outcome of its trigger order
 * @param kind the event that records it
 * @param value the event's figure
 */
record Ending(SamplerState state, Outcome outcome, Event.Kind kind, int value) {}
