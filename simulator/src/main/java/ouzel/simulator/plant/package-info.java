/** The things on board, stepped in virtual time: pumps, jar, bag, valve, probe, gas, battery, sensors. */
package ouzel.simulator.plant;
