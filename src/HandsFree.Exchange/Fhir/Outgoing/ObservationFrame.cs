using System.Globalization;
using HandsFree.Core.Journal;
using HandsFree.Exchange.Fhir.Codes;
using HandsFree.Exchange.Fhir.Observations;
using Hl7.Fhir.Model;

namespace HandsFree.Exchange.Fhir.Outgoing;

/// <summary>What every Observation says besides the reading: which it is, whose, by whom and when.</summary>
/// <param name="ids">Makes ids.</param>
/// <param name="references">Names residents and people.</param>
/// <param name="zone">The home's time zone, in which moments are written.</param>
internal sealed class ObservationFrame(FhirIds ids, References references, TimeZoneInfo zone)
{
    public References References => references;

    public FhirIds Ids => ids;

    /// <summary>Puts a reading's frame around its Observation.</summary>
    public void Around(Observation observation, string root, ReadingRecorded reading, ReadingAmended? late)
    {
        observation.Identifier.Add(ids.Of(root));
        observation.Subject = references.Patient(reading.Resident);
        observation.Effective = Moment(reading.Confirmed.By.MeasuredAt);
        observation.Issued = Whole(reading.Confirmed.By.EnteredAt);
        observation.Performer.Add(references.Person(reading.Confirmed.By.Person));
        if (reading.Confirmed.By.Late)
        {
            observation.Note.Add(new Annotation { Text = late is null ? "Late entry." : $"Late entry: {late.Reason}" });
        }

        if (reading.IsRecheck)
        {
            observation.Note.Add(new Annotation { Text = "Measured again, as a rule asked." });
        }
    }

    /// <summary>The Observation of what was not taken.</summary>
    public Observation Of(NotTakenRecorded missing, bool inError)
    {
        (string code, string display, string text) = AbsentReasons.All[missing.Reason];
        Observation observation = ObservationWriter.Absent(missing.Sign, Concepts.Of(FhirSystems.Absent, code, display, text));
        observation.Identifier.Add(ids.Of(missing.Id));
        observation.Status = inError ? ObservationStatus.EnteredInError : ObservationStatus.Final;
        observation.Subject = references.Patient(missing.Resident);
        observation.Effective = Moment(missing.At);
        observation.Issued = Whole(missing.At);
        observation.Performer.Add(references.Person(missing.Person));
        return observation;
    }

    /// <summary>A moment in the home's time, to the second.</summary>
    public FhirDateTime Moment(DateTimeOffset at) => new(Whole(at).ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture));

    /// <summary>A moment in the home's time, to the second.</summary>
    public DateTimeOffset Whole(DateTimeOffset at)
    {
        DateTimeOffset here = TimeZoneInfo.ConvertTime(at, zone);
        return here.AddTicks(-(here.Ticks % TimeSpan.TicksPerSecond));
    }
}
