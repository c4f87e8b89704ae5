using HandsFree.Core.Journal;
using HandsFree.Core.Reports;
using HandsFree.Exchange.Fhir.Codes;
using Hl7.Fhir.Model;

namespace HandsFree.Exchange.Fhir.Outgoing;

/// <summary>Makes the resources of entries that belong together.</summary>
internal sealed class UnitWriter(ObservationFrame frame)
{
    private readonly ProvenanceWriter provenance = new(frame);
    private readonly CommunicationWriter communications = new(frame);

    /// <summary>The unit.</summary>
    /// <param name="entries">All that belong to it, oldest first.</param>
    public OutgoingUnit Of(IReadOnlyList<OutgoingEvent> entries)
    {
        List<Bundle.EntryComponent> made = [];
        Dictionary<string, IReadOnlyList<Observation>> earlier = [];
        ObservationHistory[] histories = [.. Histories(entries)];
        HashSet<string> inError = [.. entries.Select(e => e.Event).OfType<EnteredInError>().Select(e => e.Event)];
        foreach (ObservationHistory history in histories)
        {
            string url = Url(history.Root);
            IReadOnlyList<Observation> states = history.States;
            made.Add(ByIdentifier(url, states[^1], frame.Ids.Of(history.Root)));
            if (states.Count > 1)
            {
                earlier[url] = states;
            }

            made.AddRange(Provenances(history, url));
        }

        foreach (OutgoingEvent entry in entries)
        {
            if (entry.Event is NotTakenRecorded missing)
            {
                made.Add(ByIdentifier(Url(missing.Id), frame.Of(missing, inError.Contains(missing.Id)), frame.Ids.Of(missing.Id)));
                made.Add(provenance.Of(entry, Url(missing.Id), first: true, "not taken: said, read back, and confirmed"));
                made.AddRange(entries.Where(e => e.Event is EnteredInError gone && gone.Event == missing.Id)
                    .Select(e => provenance.Of(e, (EnteredInError)e.Event, Url(missing.Id), null, null)));
            }
        }

        made.AddRange(entries.Select(e => e.Event).OfType<ReportOpened>().SelectMany(opened => Reported(opened, entries, histories, inError)));
        return new(
            entries.Max(e => e.Number),
            [.. entries.Select(e => e.Event.ResidentId()).OfType<string>().Distinct()],
            made,
            earlier);
    }

    private static string Whose(ReadingRecorded reading, IReadOnlyDictionary<string, ReadingRecorded> readings)
    {
        ReadingRecorded first = reading;
        while (first.Amends is { } before && readings.TryGetValue(before, out ReadingRecorded? older) && older.Id != first.Id)
        {
            first = older;
        }

        return first.Id;
    }

    private IEnumerable<ObservationHistory> Histories(IReadOnlyList<OutgoingEvent> entries)
    {
        Dictionary<string, ReadingRecorded> readings = entries.Select(e => e.Event).OfType<ReadingRecorded>().ToDictionary(r => r.Id, StringComparer.Ordinal);
        ReadingAmended[] notes = [.. entries.Select(e => e.Event).OfType<ReadingAmended>()];
        string? Root(JournalEvent happened) => happened switch
        {
            ReadingRecorded reading => Whose(reading, readings),
            EnteredInError gone when readings.TryGetValue(gone.Event, out ReadingRecorded? wrong) => Whose(wrong, readings),
            _ => null,
        };
        return entries.GroupBy(e => Root(e.Event)).Where(chain => chain.Key is not null).Select(chain => new ObservationHistory(chain.Key!, [.. chain], notes, frame));
    }

    private IEnumerable<Bundle.EntryComponent> Provenances(ObservationHistory history, string url)
    {
        Dictionary<string, ReadingRecorded> readings = history.Entries.Select(e => e.Event).OfType<ReadingRecorded>().ToDictionary(r => r.Id, StringComparer.Ordinal);
        return history.Entries.Select(entry => entry.Event switch
        {
            ReadingRecorded reading => provenance.Of(entry, reading, url, reading.Amends is { } was ? readings.GetValueOrDefault(was) : null, history.NoteOf(reading.Id) is { } note && note.Becomes == reading.Id ? note : null),
            EnteredInError gone => provenance.Of(entry, gone, url, readings.GetValueOrDefault(gone.Event), history.NoteOf(gone.Event) is { } note && note.Event == gone.Event ? note : null),
            _ => throw new InvalidOperationException($"a {entry.Event.GetType().Name} is no part of a reading"),
        });
    }

    private IEnumerable<Bundle.EntryComponent> Reported(
        ReportOpened opened, IReadOnlyList<OutgoingEvent> entries, ObservationHistory[] histories, HashSet<string> inError)
    {
        bool gone = inError.Contains(opened.Id);
        Report report = ReportBook.Of(entries.Select(e => e.Event).Where(e => !(e is EnteredInError error && error.Event == opened.Id))).ById(opened.Id)!;
        string[] rests = [.. histories.Where(h => opened.Readings.Any(h.Has)).Select(h => Url(h.Root))];
        string url = Url(opened.Id);
        yield return ByIdentifier(url, communications.Of(report, gone, rests), frame.Ids.Of(opened.Id));
        HashSet<string> parts = [opened.Id];
        foreach (OutgoingEvent entry in entries)
        {
            string? of = entry.Event switch
            {
                ReportOpened e => e.Id,
                ReportTold e => e.Report,
                ReportAcknowledged e => e.Report,
                ReportClosed e => e.Report,
                ReportNoted e => e.Report,
                PlanMade e => e.Report,
                PlanWithdrawn e => e.Report,
                _ => null,
            };
            if (of == opened.Id)
            {
                parts.Add(entry.Event.Id);
                yield return provenance.Of(entry, url, entry.Event == opened, ProvenanceWriter.Words(entry.Event));
            }
            else if (entry.Event is EnteredInError error && parts.Contains(error.Event))
            {
                yield return error.Event == opened.Id ? provenance.Of(entry, error, url, null, null) : provenance.Of(entry, url, first: false, $"taken back: {error.Reason}");
            }
        }
    }

    private string Url(string eventId) => frame.Ids.Of(eventId).Value!;

    private static Bundle.EntryComponent ByIdentifier(string url, Resource resource, Identifier identifier) => new()
    {
        FullUrl = url,
        Resource = resource,
        Request = new() { Method = Bundle.HTTPVerb.PUT, Url = $"{resource.TypeName}?{References.Search(identifier.System!, identifier.Value!)}" },
    };
}
