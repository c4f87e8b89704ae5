using HandsFree.Core.Journal;

namespace HandsFree.App.Homes;

/// <summary>Roster, settings and rules as a journal has them.</summary>
/// <param name="Settings">The content of home.json, or null.</param>
/// <param name="Roster">The residents, or null.</param>
/// <param name="Rules">The home's own rules, or null.</param>
/// <param name="Emergency">The last opening with the emergency key, where no new key was made since; else null.</param>
internal sealed record HomeKept(string? Settings, RosterKept? Roster, string? Rules, EmergencyOpened? Emergency)
{
    /// <summary>The settings' file name in events.</summary>
    public const string SettingsName = "home.json";

    /// <summary>The rules' file name in events.</summary>
    public const string RulesName = "rules.json";

    /// <summary>Of the last events of each kind.</summary>
    public static HomeKept Of(IReadOnlyList<JournalEvent> last) => new(
        last.OfType<HomeFileKept>().LastOrDefault(file => file.File == SettingsName)?.Content,
        last.OfType<RosterKept>().LastOrDefault(),
        last.OfType<HomeFileKept>().LastOrDefault(file => file.File == RulesName)?.Content,
        last.OfType<EmergencyOpened>().LastOrDefault());
}
