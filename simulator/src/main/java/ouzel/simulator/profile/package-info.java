/** The edge where a payload's figures come in from data files; the plant itself reads no file. */
package ouzel.simulator.profile;
