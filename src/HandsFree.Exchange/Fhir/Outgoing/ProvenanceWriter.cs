using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Observations;
using HandsFree.Core.Reports;
using HandsFree.Exchange.Fhir.Codes;
using Hl7.Fhir.Model;

namespace HandsFree.Exchange.Fhir.Outgoing;

/// <summary>The Provenance of an entry: who did what to a resource, when, why, and what it was before. R4 has no search for a Provenance by
/// identifier, so its id is ours and it is put under it.</summary>
internal sealed class ProvenanceWriter(ObservationFrame frame)
{
    /// <summary>Of a reading.</summary>
    /// <param name="entry">The reading's.</param>
    /// <param name="reading">What was recorded.</param>
    /// <param name="target">The full URL of the Observation.</param>
    /// <param name="was">The reading whose place this one takes, or null.</param>
    /// <param name="note">Why, or null.</param>
    public Bundle.EntryComponent Of(OutgoingEvent entry, ReadingRecorded reading, string target, ReadingRecorded? was, ReadingAmended? note)
    {
        string how = reading.Confirmed.How switch
        {
            ConfirmedHow.SaidAgain => "said, read back, and said again",
            ConfirmedHow.CorrectedThenYes => "said, corrected, read back, and confirmed by an explicit yes",
            _ => "said, read back, and confirmed by an explicit yes",
        };
        string typed = reading.Confirmed.ReadBack.Understood.Heard.Typed ? "typed" : "spoken";
        Provenance provenance = Blank(entry, target, was is null ? "CREATE" : "UPDATE", $"{(was is null ? "" : "put right: ")}{how} ({typed})", reading.Person);
        provenance.Occurred = frame.Moment(reading.Confirmed.By.MeasuredAt);
        provenance.Agent.Insert(1, Agent("verifier", "Verifier", reading.Person));
        Reason(provenance, note?.Reason);
        if (reading.Confirmed.By.Person != reading.Person)
        {
            provenance.Agent.Insert(2, Agent("performer", "Performer", reading.Confirmed.By.Person));
        }

        if (was is not null)
        {
            Before(provenance, was);
        }

        return Entry(entry, provenance);
    }

    /// <summary>Of what declares a reading, a report or a part of it an error.</summary>
    public Bundle.EntryComponent Of(OutgoingEvent entry, EnteredInError gone, string target, ReadingRecorded? was, ReadingAmended? note)
    {
        Provenance provenance = Blank(entry, target, "NULLIFY", "entered in error", gone.Person);
        Reason(provenance, note?.Reason ?? gone.Reason);
        if (was is not null)
        {
            Before(provenance, was);
        }

        return Entry(entry, provenance);
    }

    /// <summary>Of anything else.</summary>
    public Bundle.EntryComponent Of(OutgoingEvent entry, string target, bool first, string text) =>
        Entry(entry, Blank(entry, target, first ? "CREATE" : "UPDATE", text, entry.Event.Person));

    /// <summary>What happened to a report, in words.</summary>
    public static string Words(JournalEvent happened) => happened switch
    {
        ReportOpened e => $"report opened ({(e.Urgency == ReportUrgency.Now ? "now" : "this shift")})",
        ReportTold e => $"told: {e.Whom.ToString().ToLowerInvariant()}{(e.Who is { } who ? $" ({who})" : "")}",
        ReportAcknowledged => "acknowledged by a nurse",
        ReportClosed => "closed",
        ReportNoted e => $"noted: {e.Text}",
        PlanMade e => $"plan: {PlanTexts.InFigures(e)}{(e.Text.Length > 0 ? $"; {e.Text}" : "")}",
        PlanWithdrawn e => $"plan withdrawn: {e.Why}",
        _ => throw new InvalidOperationException($"no words for {happened.GetType().Name}"),
    };

    private static readonly Dictionary<string, string> Operations = new() { ["CREATE"] = "create", ["UPDATE"] = "revise", ["NULLIFY"] = "nullify" };

    private Provenance Blank(OutgoingEvent entry, string target, string operation, string text, string person) => new()
    {
        Id = Id(entry),
        Target = [new ResourceReference(target)],
        Recorded = frame.Whole(entry.Event.At),
        Location = entry.Place is { } place ? frame.References.Place(place) : null,
        Activity = Concepts.Of(FhirSystems.Operation, operation, Operations[operation], text),
        Agent =
        [
            Agent("author", "Author", person),
            new() { Type = Concepts.Of(FhirSystems.Participant, "assembler", "Assembler"), Who = new ResourceReference { Type = "Device", Display = "HandsFree" } },
        ],
    };

    private Provenance.AgentComponent Agent(string code, string display, string person) =>
        new() { Type = Concepts.Of(FhirSystems.Participant, code, display), Who = frame.References.Person(person) };

    private static void Reason(Provenance provenance, string? reason)
    {
        if (!string.IsNullOrWhiteSpace(reason))
        {
            provenance.Reason.Add(new CodeableConcept { Text = reason });
        }
    }

    private void Before(Provenance provenance, ReadingRecorded was) => provenance.Entity.Add(new()
    {
        Role = Provenance.ProvenanceEntityRole.Revision,
        What = new ResourceReference
        {
            Type = "Observation",
            Identifier = frame.Ids.Of(was.Id),
            Display = $"{ReadBackTexts.Of(was.Confirmed.Reading)}, measured {frame.Moment(was.Confirmed.By.MeasuredAt).Value}, entered {frame.Moment(was.Confirmed.By.EnteredAt).Value} by {was.Person}",
        },
    });

    private string Id(OutgoingEvent entry) => frame.Ids.Uuid($"provenance/{entry.Event.Id}");

    private Bundle.EntryComponent Entry(OutgoingEvent entry, Provenance provenance) => new()
    {
        FullUrl = $"urn:uuid:{Id(entry)}",
        Resource = provenance,
        Request = new() { Method = Bundle.HTTPVerb.PUT, Url = $"Provenance/{Id(entry)}" },
    };
}
