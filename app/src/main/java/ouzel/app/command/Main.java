package ouzel.app.command;

import org.slf4j.LoggerFactory;
import ouzel.app.exit.ExitCode;
import ouzel.app.link.SerialPorts;

/** Where the program starts. */
public final class Main {
    private Main() {}

    /** Carries out the command line {@code words} and ends the process with the code that tells how it went. */
    public static void main(String[] words) {
        Home home = Home.ofUser();
        String noLog = Log.open(home.log());
        Shell shell = new Shell(
                new Flights(),
                Screens.ofSystem(),
                home,
                () -> new SerialPorts().search().toCompletableFuture().join());
        if (!noLog.isEmpty()) {
            shell.complain(noLog);
        }
        catchWhatNobodyCaught(shell, home);
        System.exit(shell.run(words));
    }

    /** A fault that nobody caught is one sentence too; on the thread that started the program, it is the end of it. */
    private static void catchWhatNobodyCaught(Shell shell, Home home) {
        Thread starter = Thread.currentThread();
        Thread.setDefaultUncaughtExceptionHandler((thread, fault) -> {
            LoggerFactory.getLogger(Main.class).error("Thread {} broke down", thread.getName(), fault);
            shell.complain(Shell.faultSentence(fault, home));
            if (thread == starter) {
                System.exit(ExitCode.INTERNAL.code());
            }
        });
    }
}
