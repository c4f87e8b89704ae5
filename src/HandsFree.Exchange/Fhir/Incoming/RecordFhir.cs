using System.Text;
using System.Text.Json;
using HandsFree.Core.Files;
using HandsFree.Exchange.Fhir.Observations;
using HandsFree.Exchange.Rosters;
using Hl7.Fhir.Model;
using Hl7.Fhir.Serialization;

namespace HandsFree.Exchange.Fhir.Incoming;

/// <summary>Reads past Observations and Goals with limits from a bundle of FHIR R4. A resource that is no reading or no limit of ours is left out,
/// and it is said why; a file that is no such bundle is refused.</summary>
/// <param name="system">The system of the residents' ids; null where the home names none, then any identifier with such a value will do.</param>
/// <param name="isResident">Whether somebody with that id lives here.</param>
/// <param name="zone">The home's time zone.</param>
public sealed class RecordFhir(string? system, Func<string, bool> isResident, TimeZoneInfo zone)
{
    private const string Wanted = "export Observations, and Goals with limits, in one Bundle of FHIR R4 (JSON)";

    /// <summary>Every entry is looked at.</summary>
    /// <param name="file">The name that errors carry.</param>
    /// <param name="content">The file's bytes, JSON.</param>
    public IncomingRecord Read(string file, byte[] content)
    {
        List<FileError> errors = [];
        if (LocatedJson.Read(file, content, errors, anyText: true) is not { } located || !IsObject(file, located, errors) || Parsed(file, content, errors) is not { } bundle)
        {
            return IncomingRecord.Broken(errors);
        }

        int[] lines = [.. located.ItemsOf("entry").Select(e => e.Line)];
        List<IncomingReading> readings = [];
        List<IncomingLimit> limits = [];
        List<string> leftOut = [];
        for (int i = 0; i < bundle.Entry.Count; i++)
        {
            if (bundle.Entry[i].Resource is not { } resource || resource is not (Observation or Goal))
            {
                continue;
            }

            string where = $"{resource.TypeName}/{resource.Id ?? $"{i + 1}"}";
            string? Left(string why)
            {
                leftOut.Add(PlainText.Shown($"line {(i < lines.Length ? lines[i] : 0)}, {where}: {why}"));
                return null;
            }

            ResourceReference? subject = resource is Observation of ? of.Subject : ((Goal)resource).Subject;
            if (Resident(bundle, subject) is not { } resident)
            {
                Left($"is of nobody on the roster ({subject?.Identifier?.Value ?? subject?.Reference ?? "no subject"})");
                continue;
            }

            if (resource is Observation observation)
            {
                (ReadObservation? read, string? not) = ObservationReader.Of(observation, zone);
                if (read is null)
                {
                    Left(not!);
                    continue;
                }

                readings.Add(new(resident, read.Reading, read.At, where));
                continue;
            }

            (IReadOnlyList<Core.Residents.OrderedLimit> read2, string? wrong) = GoalReader.Of((Goal)resource, bundle);
            limits.AddRange(read2.Select(limit => new IncomingLimit(resident, limit, where)));
            if (wrong is not null)
            {
                Left(wrong);
            }
        }

        return new(readings, limits, leftOut, []);
    }

    private string? Resident(Bundle bundle, ResourceReference? subject)
    {
        IEnumerable<Identifier> identifiers = (subject?.Identifier is { } named ? [named] : Array.Empty<Identifier>())
            .Concat(bundle.Named(subject?.Reference) is Patient patient ? patient.Identifier : []);
        IEnumerable<string?> own = system is null && bundle.Named(subject?.Reference) is Patient { Identifier.Count: 0 } alone ? [alone.Id] : [];
        return identifiers.Where(i => system is null || i.System == system).Select(i => i.Value).Concat(own).FirstOrDefault(value => value is not null && isResident(value));
    }

    private static bool IsObject(string file, LocatedNode top, List<FileError> errors)
    {
        if (top.Kind != JsonValueKind.Object)
        {
            errors.Add(new(file, top.Line, $"is {top.KindInWords}, no FHIR resource; {Wanted}"));
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

            errors.Add(new(file, 1, $"is no Bundle; {Wanted}"));
        }
        catch (DeserializationFailedException wrong)
        {
            errors.AddRange(wrong.Exceptions.Select(e => new FileError(file, 0, PlainText.Shown($"not FHIR R4: {e.Message.ReplaceLineEndings(" ")}"))));
        }
        catch (JsonException wrong)
        {
            errors.Add(new(file, (int)(wrong.LineNumber ?? 0) + 1, $"is no FHIR resource; {Wanted}"));
        }

        return null;
    }
}
