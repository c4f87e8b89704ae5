using System.CommandLine;
using HandsFree.App.People;
using HandsFree.Core.People;

namespace HandsFree.App.Commands;

/// <summary>"handsfree people add": sets a person up.</summary>
internal static class PeopleAddCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Argument<string> person = new("PERSON") { Description = "The person's id, the one that stands beside her entries" };
        Option<Role> role = new("--role") { Description = "What the person may do: aide, nurse or supervisor; the first one is a supervisor", Required = true };
        Option<string?> name = new("--name") { Description = "The person's name", HelpName = "TEXT" };
        return host.Runs(
            new Command("add", "Sets a person up; the PIN is asked for, or read from the file that HANDSFREE_NEW_PIN_FILE names") { person, role, name },
            (parsed, services) => PeopleDesk.With(
                services, host, desk => desk.Add(parsed.GetValue(person)!, parsed.GetValue(role), parsed.GetValue(name))));
    }
}
