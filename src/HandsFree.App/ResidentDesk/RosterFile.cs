using HandsFree.App.Files;
using HandsFree.App.Homes;
using HandsFree.Exchange.Rosters;

namespace HandsFree.App.ResidentDesk;

/// <summary>A file of residents that somebody named: a table, or a FHIR bundle.</summary>
internal static class RosterFile
{
    /// <summary>The residents, or a line for each error.</summary>
    public static (ImportedRoster? Roster, IReadOnlyList<string> Errors) Read(string path, HomeSettings settings)
    {
        (byte[]? content, string? unreadable) = BoundedFile.Read(path, IsBundle(path) ? BoundedFile.MostBytesOfBundle : BoundedFile.MostBytes);
        if (content is null)
        {
            return (null, [unreadable!]);
        }

        ImportedRoster? read = Path.GetExtension(path).ToLowerInvariant() switch
        {
            ".csv" => RosterCsv.Read(path, content, settings.RosterUnits, settings.TimeZone),
            ".json" => RosterFhir.Read(path, content),
            _ => null,
        };
        return read switch
        {
            null => (null, [$"{path}: is neither .csv nor .json; name a table, or a FHIR R4 bundle"]),
            { Errors.Count: > 0 } => (null, [.. read.Errors.Select(e => e.ToString())]),
            _ => (read, []),
        };
    }

    private static bool IsBundle(string path) => Path.GetExtension(path).Equals(".json", StringComparison.OrdinalIgnoreCase);
}
