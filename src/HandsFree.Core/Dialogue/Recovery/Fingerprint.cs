using System.Reflection;
using System.Security.Cryptography;
using System.Text.Json;
using System.Text.Json.Serialization;
using HandsFree.Core.Handover;

namespace HandsFree.Core.Dialogue.Recovery;

/// <summary>What a dialogue does with what it is told depends on this program, the rules, the residents and the settings: one hash of all,
/// so that a round is told again to the same one only.</summary>
internal static class Fingerprint
{
    private static readonly JsonSerializerOptions Options = new() { Converters = { new JsonStringEnumConverter() } };

    // Words for "options" and the beginning of a spoken handover: they change no event.
    private static readonly string[] Without = [nameof(DialogueSettings.SamplePhrases), nameof(DialogueSettings.ShiftBegan)];

    /// <summary>64 hex digits.</summary>
    public static string Of(Parts parts)
    {
        string[] all =
        [
            typeof(Fingerprint).Module.ModuleVersionId.ToString(), parts.Rules.Hash, JsonSerializer.Serialize(parts.Roster.Residents, Options),
            .. typeof(DialogueSettings).GetProperties().Where(p => !Without.Contains(p.Name)).OrderBy(p => p.Name, StringComparer.Ordinal)
                .Select(p => $"{p.Name}={Text(p, parts.Settings)}"),
        ];
        return Convert.ToHexString(SHA256.HashData(JsonSerializer.SerializeToUtf8Bytes(all)));
    }

    private static string Text(PropertyInfo property, DialogueSettings settings) => property.GetValue(settings) switch
    {
        ShiftClock clock => $"{clock.Zone.Id} {JsonSerializer.Serialize(clock.Begins)}",
        var value => JsonSerializer.Serialize(value, property.PropertyType, Options),
    };
}
