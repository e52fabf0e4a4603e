/** The authority on board: arming, permissives, limits, dead-man and event store; told the time, given its readings. */
package ouzel.simulator.controller;
