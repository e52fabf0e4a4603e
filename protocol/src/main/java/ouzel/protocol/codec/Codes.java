package ouzel.protocol.codec;

import java.util.Arrays;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;

/** Finds the constant of an enum by its wire code. */
final class Codes<E extends Enum<E>> {
    static final Codes<Sampler> SAMPLER = new Codes<>(Sampler.class, Sampler::code);
    static final Codes<SamplerState> SAMPLER_STATE = new Codes<>(SamplerState.class, SamplerState::code);
    static final Codes<Reason> REASON = new Codes<>(Reason.class, Reason::code);
    static final Codes<Event.Kind> EVENT_KIND = new Codes<>(Event.Kind.class, Event.Kind::code);
    static final Codes<Outcome.Stage> STAGE = new Codes<>(Outcome.Stage.class, Outcome.Stage::code);

    private final String name;
    private final Map<Integer, E> byCode;

    private Codes(Class<E> type, ToIntFunction<E> code) {
        name = type.getSimpleName();
        byCode = Arrays.stream(type.getEnumConstants())
                .collect(Collectors.toUnmodifiableMap(code::applyAsInt, Function.identity()));
    }

    /** The constant whose code comes next in {@code body}; an unknown code is an illegal argument. */
    E read(WireReader body) {
        int code = body.unsigned8();
        E constant = byCode.get(code);
        if (constant == null) {
            throw new IllegalArgumentException(name + " : " + code + " (expected: a known code)");
        }
        return constant;
    }
}
