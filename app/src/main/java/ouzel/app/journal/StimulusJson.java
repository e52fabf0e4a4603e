package ouzel.app.journal;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonSubTypes.Type;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import ouzel.app.desk.Act;
import ouzel.app.desk.Stimulus;
import ouzel.protocol.session.LinkHealth;

/**
 * Stimuli as compact JSON, for example {@code {"what":"acted","act":{"act":"arm","sampler":"WATER"}}}.
 *
 * <p>The names here are part of the file format: a class may be renamed, its name in old files stays.
 */
final class StimulusJson {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .addMixIn(Stimulus.class, StimulusNames.class)
            .addMixIn(Act.class, ActNames.class)
            .disable(SerializationFeature.FAIL_ON_EMPTY_BEANS)
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "what")
    @JsonSubTypes({
        @Type(value = Stimulus.Opened.class, name = "opened"),
        @Type(value = Stimulus.LineChanged.class, name = "line-changed"),
        @Type(value = Stimulus.SessionOpened.class, name = "session-opened"),
        @Type(value = Stimulus.SessionLost.class, name = "session-lost"),
        @Type(value = Stimulus.StrangerHeard.class, name = "stranger-heard"),
        @Type(value = Stimulus.LinkMeasured.class, name = "link-measured"),
        @Type(value = Stimulus.Acted.class, name = "acted"),
        @Type(value = Stimulus.JournalChanged.class, name = "journal-changed"),
        @Type(value = Stimulus.NotSent.class, name = "not-sent"),
        @Type(value = Stimulus.TruthTold.class, name = "truth-told"),
    })
    interface StimulusNames {}

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "act")
    @JsonSubTypes({
        @Type(value = Act.Arm.class, name = "arm"),
        @Type(value = Act.Trigger.class, name = "trigger"),
        @Type(value = Act.Stop.class, name = "stop"),
        @Type(value = Act.SafeAll.class, name = "safe-all"),
        @Type(value = Act.Reload.class, name = "reload"),
        @Type(value = Act.SetDose.class, name = "set-dose"),
        @Type(value = Act.Attest.class, name = "attest"),
        @Type(value = Act.Acknowledge.class, name = "acknowledge"),
        @Type(value = Act.Reconnect.class, name = "reconnect"),
    })
    interface ActNames {}

    private StimulusJson() {}

    static byte[] write(Stimulus stimulus) throws JsonProcessingException {
        return MAPPER.writerFor(Stimulus.class).writeValueAsBytes(stimulus);
    }

    static Stimulus read(byte[] json) throws IOException {
        if (MAPPER.readTree(json) instanceof ObjectNode stimulus) {
            if (stimulus.path("health") instanceof ObjectNode health) {
                stimulus.set("health", complete(health));
            }
            return MAPPER.treeToValue(stimulus, Stimulus.class);
        }
        throw new IOException("A stimulus is an object");
    }

    /** Older journals measured less of the link; what they lack was not measured. */
    private static ObjectNode complete(ObjectNode health) {
        ObjectNode complete = MAPPER.valueToTree(LinkHealth.NONE);
        complete.setAll(health);
        return complete;
    }
}
