using HandsFree.Core.Journal;
using HandsFree.Exchange.Fhir.Codes;
using HandsFree.Exchange.Fhir.Observations;
using Hl7.Fhir.Model;

namespace HandsFree.Exchange.Fhir.Outgoing;

/// <summary>A reading with all that took its place: one Observation, which has one state after each entry.</summary>
/// <param name="root">The id of the first reading; the Observation is known by it for ever.</param>
/// <param name="entries">The readings and what declares one of them an error, oldest first.</param>
/// <param name="notes">What else the record says of amendments: why.</param>
/// <param name="frame">Adds subject, performer, times.</param>
internal sealed class ObservationHistory(string root, IReadOnlyList<OutgoingEvent> entries, IReadOnlyList<ReadingAmended> notes, ObservationFrame frame)
{
    /// <summary>The id of the first reading.</summary>
    public string Root => root;

    /// <summary>The entries, oldest first.</summary>
    public IReadOnlyList<OutgoingEvent> Entries => entries;

    /// <summary>The state after every entry, the present one last.</summary>
    public IReadOnlyList<Observation> States => [.. Enumerable.Range(1, entries.Count).Select(State)];

    /// <summary>Whether the Observation is of that reading.</summary>
    public bool Has(string reading) => entries.Any(e => e.Event.Id == reading);

    /// <summary>What the record says of how a reading came to be, or why it is gone.</summary>
    public ReadingAmended? NoteOf(string id) => notes.FirstOrDefault(n => n.Becomes == id) ?? notes.FirstOrDefault(n => n.Event == id);

    private Observation State(int count)
    {
        OutgoingEvent[] known = [.. entries.Take(count)];
        HashSet<string> inError = [.. known.Select(e => e.Event).OfType<EnteredInError>().Select(e => e.Event)];
        OutgoingEvent[] versions = [.. known.Where(e => e.Event is ReadingRecorded)];
        HashSet<string> replaced = [.. versions.Where(v => !inError.Contains(v.Event.Id)).Select(v => ((ReadingRecorded)v.Event).Amends).OfType<string>()];
        OutgoingEvent? standing = versions.LastOrDefault(v => !inError.Contains(v.Event.Id) && !replaced.Contains(v.Event.Id));
        OutgoingEvent shown = standing ?? versions[^1];
        ReadingRecorded reading = (ReadingRecorded)shown.Event;
        Observation observation = ObservationWriter.Of(reading.Confirmed.Reading);
        frame.Around(observation, root, reading, notes.FirstOrDefault(n => n.Becomes == reading.Id && n.Kind == AmendmentKind.LateEntry));
        if (standing is null)
        {
            observation.Status = ObservationStatus.EnteredInError;
            return observation;
        }

        observation.Status = versions.Length == 1 ? ObservationStatus.Final
            : notes.Any(n => n.Becomes == reading.Id && n.Kind == AmendmentKind.CorrectedValue) ? ObservationStatus.Corrected
            : ObservationStatus.Amended;
        ReadingMeaning.Add(observation, shown, reading);
        return observation;
    }
}
