using System.Globalization;
using System.Text.RegularExpressions;
using Hl7.Fhir.Model;

namespace HandsFree.Exchange.Rosters;

/// <summary>The Encounters and Locations of a bundle: where each Patient lives.</summary>
internal sealed partial class FhirPlaces(Bundle bundle)
{
    private const string BedType = "bd";
    private readonly List<Encounter> encounters = [.. bundle.Entry.Select(e => e.Resource).OfType<Encounter>()
        .Where(e => e.Status is Encounter.EncounterStatus.InProgress or Encounter.EncounterStatus.Onleave)];

    /// <summary>The place, or what is wrong and what is needed.</summary>
    public (FhirPlace? Place, string? Wrong) Of(Patient patient)
    {
        Encounter[] hers = [.. encounters.Where(e => bundle.Named(e.Subject?.Reference) == patient)];
        if (hers.Length != 1)
        {
            return (null, $"has {hers.Length} Encounters in progress; one with the Location of the bed or room is needed");
        }

        ResourceReference? reference = hers[0].Location.LastOrDefault(l => l.Status is null or Encounter.EncounterLocationStatus.Active)?.Location;
        if (reference?.Reference is not { } wanted || bundle.Named(wanted) is not Location location)
        {
            return (null, $"the Encounter's Location \"{reference?.Reference}\" is not in the Bundle; export it with it");
        }

        bool isBed = location.PhysicalType?.Coding.Exists(c => c.Code == BedType) == true;
        Location? room = isBed && location.PartOf?.Reference is { } part ? bundle.Named(part) as Location : location;
        if (RoomNumber().Match(room?.Name ?? "") is not { Success: true } number)
        {
            return (null, $"the Location \"{room?.Name ?? location.Name}\" has no room number from 1 to 999 in its name");
        }

        string? bed = isBed ? Letter().Match(location.Name ?? "").Groups["bed"].Value.ToLowerInvariant() : null;
        if (bed is "")
        {
            return (null, $"the bed \"{location.Name}\" has no letter a to d in its name");
        }

        DateOnly? leave = hers[0].Status == Encounter.EncounterStatus.Onleave ? Since(hers[0]) : null;
        return (new(int.Parse(number.Value, CultureInfo.InvariantCulture), bed, leave), null);
    }

    private static DateOnly Since(Encounter encounter)
    {
        string? start = encounter.StatusHistory.LastOrDefault(h => h.Status == Encounter.EncounterStatus.Onleave)?.Period?.Start ?? encounter.Period?.Start;
        return start is { Length: >= 10 } && DateOnly.TryParseExact(start[..10], "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day)
            ? day
            : DateOnly.MinValue;
    }

    [GeneratedRegex("(?<![0-9])[1-9][0-9]{0,2}(?![0-9])")]
    private static partial Regex RoomNumber();

    [GeneratedRegex("(?<![A-Za-z])(?<bed>[A-Da-d])(?![A-Za-z])")]
    private static partial Regex Letter();
}
