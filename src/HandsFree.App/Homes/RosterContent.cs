using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;
using HandsFree.Core.Files;
using HandsFree.Core.Journal;
using HandsFree.Core.Residents;

namespace HandsFree.App.Homes;

/// <summary>A roster as the journal keeps it: the content of roster.json, with its units.</summary>
internal static class RosterContent
{
    /// <summary>The content of a roster, the same for the same residents.</summary>
    public static string Of(Roster roster, HomeSettings settings)
    {
        JsonObject json = new RosterWriter(settings).Json(roster);
        return json.ToJsonString();
    }

    /// <summary>SHA-256 in hex of the units and the content.</summary>
    public static string Hash(string content, HomeSettings settings) => Convert.ToHexStringLower(
        SHA256.HashData(Encoding.UTF8.GetBytes($"{settings.TemperatureUnit} {settings.WeightUnit}\n{content}")));

    /// <summary>The roster that an event keeps; null where it can't be read any more.</summary>
    /// <param name="kept">With its content.</param>
    /// <param name="settings">The home's time zone; the units are the event's.</param>
    public static Roster? Read(RosterKept kept, HomeSettings settings)
    {
        List<FileError> errors = [];
        Roster roster = Read(kept, "roster.json of the journal", settings, errors);
        return errors.Count == 0 ? roster : null;
    }

    /// <summary>The roster that an event keeps.</summary>
    /// <param name="kept">With its content.</param>
    /// <param name="name">How errors name it.</param>
    /// <param name="settings">The home's time zone; the units are the event's.</param>
    /// <param name="errors">Gets all that is wrong.</param>
    public static Roster Read(RosterKept kept, string name, HomeSettings settings, ICollection<FileError> errors)
    {
        HomeSettings then = settings with { TemperatureUnit = kept.Temperature, WeightUnit = kept.Weight };
        return RosterReader.Read(name, Encoding.UTF8.GetBytes(kept.Content ?? ""), then, errors);
    }
}
