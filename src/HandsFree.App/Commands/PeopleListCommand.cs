using System.CommandLine;
using System.Text.Json;
using HandsFree.App.Composition;
using HandsFree.App.Journals;
using HandsFree.App.People;

namespace HandsFree.App.Commands;

/// <summary>"handsfree people list": who may unlock the journal.</summary>
internal static class PeopleListCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Option<bool> json = new("--json") { Description = "One JSON object a line for each person" };
        return host.Runs(new Command("list", "Lists who may unlock the journal") { json }, (parsed, services) => JournalFile.Reading(services, host, journal =>
        {
            foreach (PersonLine person in PersonLine.Of(journal))
            {
                host.Surroundings.Out.WriteLine(parsed.GetValue(json)
                    ? JsonSerializer.Serialize(new { person = person.Id, role = EnumWords.Of(person.Role), name = person.Name })
                    : $"{person.Id}: {EnumWords.Of(person.Role)}{(person.Name is { } name ? $", {name}" : "")}");
            }

            if (!journal.People.Any)
            {
                host.Surroundings.Error.WriteLine("nobody is set up; this device opens the journal for whoever uses it (handsfree people add)");
            }

            return ExitCodes.Done;
        }));
    }
}
