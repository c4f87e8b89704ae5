using System.Text;
using HandsFree.App.Files;
using HandsFree.App.Unlocking;
using HandsFree.Store.Journaling;
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
        return Of(folder, settings, roster, ReadOwnRules(folder.RulesFile, errors), errors);
    }

    private static HomeOpening Of(HomeFolder folder, HomeSettings settings, Roster roster, RuleFile? own, List<FileError> errors)
    {
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

    /// <summary>A home as its journal has it, once somebody is set up; else as its files describe it.</summary>
    /// <param name="folder">Need not exist.</param>
    /// <param name="machineZone">The time zone where the settings name none.</param>
    /// <param name="unlocker">Opens the journal.</param>
    public static HomeOpening Open(HomeFolder folder, TimeZoneInfo machineZone, Unlocker unlocker)
    {
        if (!IsSealed(folder))
        {
            return Open(folder, machineZone);
        }

        (HomeJournal? opened, string? error) = HomeJournal.Open(folder, unlocker);
        using HomeJournal? journal = opened;
        if (journal is null)
        {
            return HomeOpening.Broken([Line(folder, error!)]);
        }

        try
        {
            return Of(folder, machineZone, journal.HomeKept());
        }
        catch (Exception wrong) when (wrong is JournalReadException or InvalidDataException)
        {
            return HomeOpening.Broken([Line(folder, wrong.Message)]);
        }
    }

    /// <summary>Whether roster, settings and rules are in the journal: somebody is set up, or the journal is gone that would tell.</summary>
    public static bool IsSealed(HomeFolder folder)
    {
        try
        {
            return File.Exists(folder.JournalFile) ? !Journal.OpensWithoutPin(folder.JournalFile) : Journal.WasHere(folder.JournalFile, folder.States) || folder.HasLostJournal;
        }
        catch (JournalReadException)
        {
            return false; // no journal that could tell; whoever opens it is told what is wrong with it
        }
    }

    private static HomeOpening Of(HomeFolder folder, TimeZoneInfo machineZone, HomeKept kept)
    {
        List<FileError> errors = [];
        HomeSettings settings = kept.Settings is { } json
            ? SettingsReader.Read(folder.SettingsFile, Encoding.UTF8.GetBytes(json), machineZone, errors)
            : new HomeSettings { TimeZone = machineZone };
        Roster roster = kept.Roster is { } residents ? RosterContent.Read(residents, folder.RosterFile, settings, errors) : new Roster([]);
        return Of(folder, settings, roster, kept.Rules is { } rules ? new RuleFile(folder.RulesFile, rules) : null, errors);
    }

    private static FileError Line(HomeFolder folder, string error)
    {
        string name = $"journal {folder.JournalFile}: ";
        return new FileError(folder.JournalFile, 0, error.StartsWith(name, StringComparison.Ordinal) ? error[name.Length..] : error);
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
