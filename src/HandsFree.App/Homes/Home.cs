using System.Text;
using HandsFree.App.Files;
using HandsFree.Core.Files;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;

namespace HandsFree.App.Homes;

/// <summary>One home as its files describe it.</summary>
/// <param name="Folder">Where its data lies.</param>
/// <param name="Settings">How it works.</param>
/// <param name="Roster">Its residents.</param>
/// <param name="Rules">The rules in force: the program's and its own.</param>
internal sealed record Home(HomeFolder Folder, HomeSettings Settings, Roster Roster, Rulebook Rules)
{
    /// <summary>The home's own rule file, or null.</summary>
    public RuleFile? OwnRules { get; init; }

    /// <summary>Reads the files of a home; one that is not there means its defaults: no residents, no rules of its own.</summary>
    /// <param name="folder">Need not exist.</param>
    /// <param name="machineZone">The time zone where home.json names none.</param>
    public static HomeOpening Open(HomeFolder folder, TimeZoneInfo machineZone)
    {
        List<FileError> errors = [];
        HomeSettings settings = SettingsReader.Read(folder.SettingsFile, machineZone, errors);
        Roster roster = RosterReader.Read(folder.RosterFile, settings, errors);
        RuleFile? own = ReadOwnRules(folder.RulesFile, errors);
        RulebookLoading rules = Rulebook.Load(own);
        if (rules.Rulebook is not null && settings.BreathsInThirtySeconds is { } allowed)
        {
            own = allowed.Allow(own, folder.RulesFile);
            rules = Rulebook.Load(own);
        }

        errors.AddRange(rules.Errors);
        return errors.Count > 0 || rules.Rulebook is null
            ? HomeOpening.Broken(errors)
            : HomeOpening.Of(new Home(folder, settings, roster, rules.Rulebook) { OwnRules = own });
    }

    private static RuleFile? ReadOwnRules(string path, List<FileError> errors)
    {
        if (!Path.Exists(path))
        {
            return null;
        }

        (byte[]? content, string? error) = BoundedFile.Read(path);
        if (content is null)
        {
            errors.Add(new FileError(path, 0, error![(path.Length + 2)..]));
            return null;
        }

        return new RuleFile(path, Encoding.UTF8.GetString(content));
    }
}
