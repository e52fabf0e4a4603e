package ouzel.simulator.controller;

import ouzel.protocol.message.Sampler;

/**
 * The one sampler that is armed, and what its single trigger will do.
 *
 * @param sampler which
 * @param orderId the arm order that granted it
 * @param dose the asked amount, in the unit of {@link ouzel.protocol.message.Arm#dose()}
 * @param attested bits of the permissives a person has attested for it
 * @param token what the trigger must name
 * @param grantedAtMillis when it was granted, ms
 * @param lifeMillis how long the token lives, ms
 */
record Armed(Sampler sampler, long orderId, int dose, int attested, long token, long grantedAtMillis, int lifeMillis) {

    int ageMillis(long nowMillis) {
        return (int) Math.min(nowMillis - grantedAtMillis, Integer.MAX_VALUE);
    }

    boolean isOver(long nowMillis) {
        return ageMillis(nowMillis) >= lifeMillis;
    }

    int lifeLeftMillis(long nowMillis) {
        return Math.max(0, lifeMillis - ageMillis(nowMillis));
    }
}
