package ouzel.app.command;

import picocli.CommandLine.Command;

/** The program itself; what it does without a command is done by {@code desk}. */
@Command(
        name = "ouzel",
        description = {
            "Ground console for a sampling payload under a drone: water into a jar, air into a gas bag, soil with a"
                    + " gas-driven probe.",
            "",
            "The operator arms a sampler once every condition holds, triggers it, watches the pump current or the"
                    + " valve, and gets an amount with its uncertainty and a verdict. All of it goes into a journal"
                    + " that survives a crash and plays back the same. A radio stop is no safety cut-off: the arming"
                    + " plug is.",
            "",
            "New here? Start 'ouzel' alone: it opens a rehearsal in which nothing can move.",
            ""
        },
        commandListHeading = "%nCommands:%n",
        footerHeading = "%nExamples:%n",
        footer = {
            "  ouzel                                           rehearse in a window",
            "  ouzel rehearse --headless --seed 42 --out DIR   rehearse without one, in a second or two",
            "  ouzel payload --tcp 5760                        a simulated payload on its own",
            "  ouzel desk --tcp localhost:5760                 ... and a desk for it",
            "  ouzel desk --serial /dev/ttyUSB0 --key FILE     a real payload",
            "  ouzel playback FILE.ouzel                       a sortie once more",
            "  ouzel link-test --serial auto --key FILE        is the radio good enough to fly with",
            "  ouzel ports                                     which serial lines are there",
            "  ouzel key FILE                                  a new pairing key",
        })
final class RootCommand {}
