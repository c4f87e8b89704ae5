using HandsFree.Core.Journal;
using HandsFree.Core.Reports;
using Hl7.Fhir.Model;

namespace HandsFree.Exchange.Fhir.Outgoing;

/// <summary>A report as a Communication: to be told (preparation), told and not acknowledged (in-progress), acknowledged (completed; received
/// says when). A report of now is asap, one of this shift routine.</summary>
internal sealed class CommunicationWriter(ObservationFrame frame)
{
    private const string Categories = "http://terminology.hl7.org/CodeSystem/communication-category";

    /// <summary>Makes it.</summary>
    /// <param name="report">With all that happened to it.</param>
    /// <param name="inError">It should never have been opened.</param>
    /// <param name="observations">The full URLs of the Observations on which it rests.</param>
    public Communication Of(Report report, bool inError, IEnumerable<string> observations)
    {
        ReportTold? told = report.NurseTold;
        string? nurse = report.Acknowledged?.Person;
        ResourceReference[] rests = [.. observations.Select(url => new ResourceReference(url))];
        Communication communication = new()
        {
            Identifier = [frame.Ids.Of(report.Id)],
            Status = inError ? EventStatus.EnteredInError
                : report.State switch
                {
                    ReportState.Open => EventStatus.Preparation,
                    ReportState.Told => EventStatus.InProgress,
                    _ => EventStatus.Completed,
                },
            Category = [report.Urgency == ReportUrgency.Now ? new CodeableConcept(Categories, "alert", "Alert", null) : new CodeableConcept(Categories, "notification", "Notification", null)],
            Priority = report.Urgency == ReportUrgency.Now ? RequestPriority.Asap : RequestPriority.Routine,
            Subject = frame.References.Patient(report.Resident),
            Topic = new CodeableConcept { Text = "Report to a nurse" },
            SentElement = told is null ? null : frame.Moment(told.ToldAt),
            ReceivedElement = report.Acknowledged is { } known ? frame.Moment(known.At) : null,
            Sender = frame.References.Person(report.Opened.Person),
            Recipient = nurse is null ? [] : [frame.References.Person(nurse)],
            About = [.. rests],
            Payload = [new() { Content = new FhirString(report.Situation.Length > 0 ? report.Situation : "report") }],
        };
        communication.ReasonReference.AddRange(rests.Select(r => (ResourceReference)r.DeepCopy()));
        communication.Note.AddRange(Notes(report).Select(n => new Annotation { Author = frame.References.Person(n.Person), TimeElement = frame.Moment(n.At), Text = n.Text }));
        return communication;
    }

    private static IEnumerable<(string Person, DateTimeOffset At, string Text)> Notes(Report report) =>
    [
        .. report.Told.Select(t => (t.Person, t.ToldAt, $"{ProvenanceWriter.Words(t)}, {t.How switch { ToldHow.ByPhone => "by telephone", ToldHow.InWriting => "in writing", _ => "face to face" }}")),
        .. report.Acknowledged is { Advised: { } advised } known ? [(known.Person, known.At, $"Advised and read back: {advised}")] : Array.Empty<(string, DateTimeOffset, string)>(),
        .. report.Notes.Select(n => (n.Person, n.At, n.Text)),
        .. report.Plans.Select(p => (p.Person, p.At, $"{ProvenanceWriter.Words(p)}, until {p.Until:yyyy-MM-dd HH:mm}")),
        .. report.Closed is { } closed ? [(closed.Person, closed.At, $"Closed: {closed.Outcome}")] : Array.Empty<(string, DateTimeOffset, string)>(),
    ];
}
