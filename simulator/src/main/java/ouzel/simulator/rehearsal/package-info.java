/** A whole simulated payload and the pilot who carries it, put together for rehearsals in virtual or real time. */
package ouzel.simulator.rehearsal;
