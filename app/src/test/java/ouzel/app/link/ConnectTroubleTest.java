package ouzel.app.link;

import static org.assertj.core.api.Assertions.assertThat;

import io.netty.channel.ConnectTimeoutException;
import java.io.IOException;
import java.net.BindException;
import java.net.ConnectException;
import java.net.NoRouteToHostException;
import java.net.UnknownHostException;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ConnectTroubleTest {
    private static final String WHERE = "payload.lan:5760";

    @Test
    void givesEachFailureItsOwnWordsAndNamesThePlace() {
        Map<Throwable, String> words = Map.of(
                new UnknownHostException("payload.lan"), "No computer is known",
                new ConnectTimeoutException("timed out"), "Nothing answered at payload.lan:5760 within 3 s",
                new NoRouteToHostException("no route"), "There is no way to",
                new ConnectException("Connection refused"), "Nothing listens at",
                new IOException("out of sockets"), "could not be opened (out of sockets)");

        words.forEach((cause, text) -> assertThat(ConnectTrouble.ofOpening(WHERE, cause))
                .contains(text)
                .contains(WHERE));
    }

    @Test
    void givesTheSentenceOfAPortAsItIs() {
        LineFailure failure = new LineFailure(LineFailure.Cause.IN_USE, "It is in use.");

        assertThat(ConnectTrouble.ofOpening(WHERE, failure)).isEqualTo("It is in use.");
    }

    @Test
    void saysThatAPortNumberIsTaken() {
        assertThat(ConnectTrouble.ofListening(WHERE, new BindException("Address already in use")))
                .contains("port number is in use");
    }
}
