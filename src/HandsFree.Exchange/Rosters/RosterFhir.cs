using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using HandsFree.Core.Files;
using HandsFree.Core.Residents;
using Hl7.Fhir.Model;
using Hl7.Fhir.Serialization;

namespace HandsFree.Exchange.Rosters;

/// <summary>Reads residents from a FHIR R4 bundle of Patients, Locations and the Encounters that join them.</summary>
/// <remarks>R4 gives a Patient no place of its own: the Encounter in progress names the Location of the bed (physicalType "bd") or room
/// ("ro"); a bed is part of its room. Flags and ServiceRequests tell of isolation and of an ordered posture test. The id is the identifier of type MR (HL7 table 0203), else the first one, else the resource's id.
/// A patient who is not active or has died is left out, one whose encounter is "onleave" is away. Limits, arms and usual values are
/// not in these resources: they stay as the roster has them, and so does what no resource of the bundle speaks of.</remarks>
public static partial class RosterFhir
{
    private const string MedicalRecordNumber = "MR";

    private static readonly IReadOnlySet<string> Given = new HashSet<string>
    {
        RosterColumns.Id, RosterColumns.Name, RosterColumns.OfficialName, RosterColumns.Room, RosterColumns.Bed, RosterColumns.Born, RosterColumns.Away,
    };

    /// <summary>Every entry is checked.</summary>
    /// <param name="file">The name that errors carry.</param>
    /// <param name="content">The file's bytes, JSON.</param>
    public static ImportedRoster Read(string file, byte[] content)
    {
        List<FileError> errors = [];
        if (LocatedJson.Read(file, content, errors, anyText: true) is not { } located || !IsObject(file, located, errors) || Parsed(file, content, errors) is not { } bundle)
        {
            return ImportedRoster.Of([], errors, []);
        }

        int[] lines = [.. located.ItemsOf("entry").Select(e => e.Line)];
        FhirPlaces places = new(bundle);
        FhirOrders orders = new(bundle);
        HashSet<string> given = [.. Given, .. orders.Given];
        List<ImportedResident> residents = [];
        List<string> notes = [];
        for (int i = 0; i < bundle.Entry.Count; i++)
        {
            int line = i < lines.Length ? lines[i] : 0;
            Resource? resource = bundle.Entry[i].Resource;
            if (resource is not Patient patient)
            {
                errors.AddRange(resource is not null && orders.Stray(resource) is { } stray ? [new FileError(file, line, $"{resource.TypeName}/{resource.Id}: {stray}")] : Array.Empty<FileError>());
                continue;
            }

            if (patient.Active == false || patient.Deceased is FhirBoolean { Value: true } or FhirDateTime)
            {
                notes.Add($"line {line}: Patient/{patient.Id} is not active or has died, left out");
                continue;
            }

            if (Resident(patient, places, orders, reason => errors.Add(new(file, line, $"Patient/{patient.Id}: {reason}"))) is { } resident)
            {
                residents.Add(new(resident, given, $"line {line}"));
            }
        }

        if (residents.Count == 0 && errors.Count == 0)
        {
            errors.Add(new(file, 0, "has no active Patient; export the Patients with their Encounters and Locations in one Bundle"));
        }

        foreach ((int index, string reason) in RosterFaults.Of([.. residents.Select(r => r.Resident)], i => residents[i].Where))
        {
            errors.Add(new(file, int.Parse(residents[index].Where["line ".Length..], CultureInfo.InvariantCulture), reason));
        }

        return ImportedRoster.Of(residents, errors, notes);
    }

    private static bool IsObject(string file, LocatedNode top, List<FileError> errors)
    {
        if (top.Kind != JsonValueKind.Object)
        {
            errors.Add(new(file, top.Line, $"is {top.KindInWords}, not a FHIR resource; export the Patients with their Encounters and Locations in one Bundle"));
        }

        return top.Kind == JsonValueKind.Object;
    }

    private static Bundle? Parsed(string file, byte[] content, List<FileError> errors)
    {
        try
        {
            FhirJsonDeserializer deserializer = new(new DeserializerSettings().UsingMode(DeserializationMode.Strict));
            if (deserializer.DeserializeResource(Encoding.UTF8.GetString(content).TrimStart('\uFEFF')) is Bundle bundle)
            {
                return bundle;
            }

            errors.Add(new(file, 1, "is no Bundle; export the Patients with their Encounters and Locations in one Bundle"));
        }
        catch (DeserializationFailedException wrong)
        {
            errors.AddRange(wrong.Exceptions.Select(e => new FileError(file, LineOf(e.Message), $"not FHIR R4: {e.Message.ReplaceLineEndings(" ")}")));
        }

        catch (JsonException wrong)
        {
            // The library reads what is no resource at all further than it checked.
            errors.Add(new(file, (int)(wrong.LineNumber ?? 0) + 1, "is no FHIR resource; export the Patients with their Encounters and Locations in one Bundle"));
        }

        return null;
    }

    private static int LineOf(string message) =>
        Lines().Match(message) is { Success: true } match ? int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture) : 0;

    private static Resident? Resident(Patient patient, FhirPlaces places, FhirOrders orders, Action<string> fault)
    {
        HumanName? official = patient.Name.Find(n => n.Use == HumanName.NameUse.Official) ?? patient.Name.FirstOrDefault();
        HumanName? spoken = patient.Name.Find(n => n.Use is HumanName.NameUse.Usual or HumanName.NameUse.Nickname) ?? official;
        string name = Words(spoken);
        if (name.Length == 0)
        {
            fault("has no name; a name with given and family is needed");
        }

        string id = Identifier(patient);
        if (id.Length == 0)
        {
            fault("has neither an identifier nor an id; one that stays is needed");
        }

        if (!DateOnly.TryParseExact(patient.BirthDate, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly born))
        {
            fault($"birthDate is {(patient.BirthDate is null ? "missing" : $"\"{patient.BirthDate}\"")}; year, month and day are needed");
        }

        (OrderedTest? test, string? incomplete) = orders.PostureTest(patient);
        if (incomplete is not null)
        {
            fault(incomplete);
        }

        (FhirPlace? place, string? wrong) = places.Of(patient);
        if (place is null)
        {
            fault(wrong!);
            return null;
        }

        Resident resident = new()
        {
            Id = id,
            Name = name,
            OfficialName = Words(official) is var other && other != name ? other : null,
            Room = place.Room,
            Bed = place.Bed,
            Born = born,
            Isolation = orders.Isolation(patient),
            PostureTest = test,
            Away = place.OnLeaveSince is { } since ? new Absence("leave", since, null) : null,
        };
        foreach (string? text in (string?[])[resident.Id, resident.Name, resident.OfficialName, resident.Bed, resident.Isolation, resident.PostureTest?.OrderedBy])
        {
            if (text is not null && PlainText.WhyNot(text) is { } steers)
            {
                fault($"the text \"{PlainText.Shown(text)}\" {steers}");
            }
        }

        return resident;
    }

    private static string Identifier(Patient patient) =>
        (patient.Identifier.Find(i => i.Type?.Coding.Exists(c => c.Code == MedicalRecordNumber) == true) ?? patient.Identifier.FirstOrDefault())?.Value ?? patient.Id ?? "";

    internal static string Words(HumanName? name) => name switch
    {
        null => "",
        { GivenElement.Count: 0, Family: null } => name.Text?.Trim() ?? "",
        _ => string.Join(' ', name.Given.Take(1).Append(name.Family).Where(w => !string.IsNullOrWhiteSpace(w))).Trim(),
    };

    [GeneratedRegex("line ([0-9]+)")]
    private static partial Regex Lines();
}
