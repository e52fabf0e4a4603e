/** The fold put to work: live on a port, headless in virtual time, or against the simulated payload in this process. */
package ouzel.app.flight;
