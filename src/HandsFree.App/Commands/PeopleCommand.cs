using System.CommandLine;
using HandsFree.App.People;

namespace HandsFree.App.Commands;

/// <summary>"handsfree people": who may unlock the journal.</summary>
internal static class PeopleCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Argument<string> person = new("PERSON") { Description = "The person's id, the one that stands beside her entries" };
        return new Command("people", "Who may unlock the journal: sets people up, changes PINs, the recovery key on paper")
        {
            PeopleListCommand.Make(host),
            PeopleAddCommand.Make(host),
            Of(host, "pin", "Gives a person another PIN: her own, or anybody's by a supervisor", (desk, who) => desk.ChangePin(who)),
            Of(host, "digits", "Sets four to eight digits that unlock a person's locked session when she says them; asked for, or read from the file that HANDSFREE_NEW_DIGITS_FILE names", (desk, who) => desk.SetDigits(who)),
            Of(host, "remove", "Lets a person unlock no more; her entries stay", (desk, who) => desk.Remove(who)),
            host.Runs(new Command("recovery", "Makes a new recovery key and shows it once"), (_, services) => PeopleDesk.With(services, host, desk => desk.MakeRecovery())),
            host.Runs(
                new Command("emergency", "Makes a new emergency key for a sealed envelope and shows it once: it opens the journal for a nurse's work when nobody else can (--emergency)"),
                (_, services) => PeopleDesk.With(services, host, desk => desk.MakeEmergency())),
            Recover(host, person),
        };
    }

    private static Command Of(CommandHost host, string name, string description, Func<PeopleDesk, string, int> work)
    {
        Argument<string> person = new("PERSON") { Description = "The person's id" };
        return host.Runs(
            new Command(name, description) { person },
            (parsed, services) => PeopleDesk.With(services, host, desk => work(desk, parsed.GetValue(person)!)));
    }

    private static Command Recover(CommandHost host, Argument<string> person) => host.Runs(
        new Command("recover", "Gives a supervisor a new PIN with the recovery key on paper") { person },
        (parsed, services) => PeopleDesk.Recover(services, host, parsed.GetValue(person)!));
}
