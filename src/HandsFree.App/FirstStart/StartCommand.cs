using System.CommandLine;
using HandsFree.App.Checks;
using HandsFree.App.Commands;
using HandsFree.App.Composition;
using HandsFree.App.Homes;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.FirstStart;

/// <summary>"handsfree start": what a new home needs, as questions; what is there already is not asked again, so that it can be left and
/// gone on with. Each answer is carried out by the command that does it anyway. Where all is there, it begins a round.</summary>
internal sealed class StartCommand
{
    private const string Later = "You can go on at any time: handsfree start";

    private readonly CommandHost host;
    private readonly HomeFolder folder;
    private readonly TimeProvider time;
    private readonly Questions ask;

    private StartCommand(CommandHost host, IServiceProvider services)
    {
        this.host = host;
        folder = services.GetRequiredService<HomeFolder>();
        time = services.GetRequiredService<TimeProvider>();
        ask = new Questions(host.Surroundings);
    }

    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host) =>
        host.Runs(new Command("start", "What a new home needs, as questions; then a round"), (_, services) => new StartCommand(host, services).Go());

    private int Go()
    {
        bool asked = false;
        foreach ((Func<bool> isDone, string heading, Action step) in (IReadOnlyList<(Func<bool>, string, Action)>)
        [
            (() => File.Exists(folder.SettingsFile) || PeopleCheck.IsAnybodySetUp(folder, time) == true, "1. The home", AskForHome),
            (() => HasResidents() || PeopleCheck.IsAnybodySetUp(folder, time) == true, "2. The residents", () => new ResidentQuestions(ask, folder, Run).Run()),
            (() => PeopleCheck.IsAnybodySetUp(folder, time) != false, "3. You, who answer for it", AskForSupervisor),
            (() => File.Exists(folder.SoundFile), "4. Microphone and earpiece", AskForSound),
        ])
        {
            if (ask.Left || isDone())
            {
                continue;
            }

            if (!asked)
            {
                ask.Say("Enter takes what stands in brackets, \"?\" explains, \"leave\" ends; what was answered stays.");
            }

            asked = true;
            ask.Say($"\n{heading}");
            step();
        }

        if (!asked)
        {
            return Run("round");
        }

        if (!ask.Left)
        {
            ask.Say("\n5. Does it work?");
            Run("check");
            if (ask.Yes("\nListen to a small shift in a made-up home, two minutes", "Invented residents, a recorded aide; nothing of it is kept."))
            {
                Run("demo", "--fast");
            }
        }

        ask.Say(ask.Left ? $"\n{Later}" : "\nThe round: handsfree round. Help: handsfree help round");
        return ExitCodes.Done;
    }

    private void AskForHome()
    {
        if (new HomeQuestions(ask, folder, time.LocalTimeZone).Run() is { } wrong)
        {
            ask.Say($"  {wrong}");
        }
    }

    private void AskForSupervisor()
    {
        while (!ask.Left && PeopleCheck.IsAnybodySetUp(folder, time) == false)
        {
            string id = ask.Ask(
                "Your id, or Enter for later", "", "A short word that stands beside what you enter, such as nurse-1. Then a passphrase is asked for twice; it is not shown.");
            if (id.Length == 0 || ask.Left)
            {
                return;
            }

            (int code, string written) = Watched("people", "add", id, "--role", "supervisor");
            if (code == ExitCodes.Done)
            {
                OnPaper(written.TrimEnd()[^4..]);
            }
        }
    }

    // Whoever can read its end from the paper has written it down.
    private void OnPaper(string end)
    {
        const string Help = "Write the whole key on paper, read it from there, and lock the paper away. Without it a lost passphrase is lost with all of the record.";
        while (!ask.Left && !string.Equals(ask.Ask("The last four signs of the recovery key, read from your paper", "", Help), end, StringComparison.OrdinalIgnoreCase))
        {
            ask.Say("  That is not its end.");
        }
    }

    private void AskForSound()
    {
        if (Run("devices") != ExitCodes.Done)
        {
            return; // it said what is missing, and that keys do
        }

        string microphone = ask.Ask("Microphone, by its name above", "the one with the star", "A headset hears best. Enter takes the one that is used now.");
        string loudspeaker = ask.Ask("Earpiece or loudspeaker, by its name above", "the one with the star", "Values are said there: an earpiece keeps them private.");
        if (!ask.Left)
        {
            Run([
                "devices", "--keep",
                .. microphone == "the one with the star" ? Array.Empty<string>() : ["--microphone", microphone],
                .. loudspeaker == "the one with the star" ? Array.Empty<string>() : ["--loudspeaker", loudspeaker],
            ]);
        }
    }

    private bool HasResidents() => Home.Open(folder, time.LocalTimeZone).TryGet(out Home? home) && home.Roster.Residents.Count > 0;

    private int Run(params string[] command) => CommandLine.Run([.. command, "--home", folder.Path], host.Surroundings);

    private (int Code, string Written) Watched(params string[] command)
    {
        using StringWriter written = new();
        int code = CommandLine.Run([.. command, "--home", folder.Path], host.Surroundings with { Out = written });
        host.Surroundings.Out.Write(written.ToString());
        return (code, written.ToString());
    }
}
