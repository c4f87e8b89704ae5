using HandsFree.Core.Dialogue;
using HandsFree.Core.Meanings;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Handover;

/// <summary>Answers the questions of the change of shift from a view. Pure.</summary>
public static class HandoverAnswerer
{
    /// <summary>The answer to one question.</summary>
    /// <param name="view">What the journal says.</param>
    /// <param name="query">The question.</param>
    /// <param name="cursor">Where the listener stands; <see cref="HandoverCursor.Start"/> at first.</param>
    public static HandoverAnswer Answer(HandoverView view, Meaning.Query query, HandoverCursor cursor)
    {
        switch (query.Kind)
        {
            case QueryKind.Next:
                return Move(view, cursor, 1);
            case QueryKind.Previous:
                return Move(view, cursor, -1);
            case QueryKind.Repeat:
                return Move(view, cursor, 0);
            case QueryKind.Details:
                return Details(view, cursor);
            case QueryKind.LastPulse:
                return LastPulse(view, cursor);
            case QueryKind.Goodbye:
                return new HandoverAnswer("Goodbye.", [], cursor, IsGoodbye: true);
            default:
                return Begin(view, new HandoverCursor(query.Kind, query.Room, 0));
        }
    }

    private static HandoverAnswer Begin(HandoverView view, HandoverCursor cursor)
    {
        IReadOnlyList<HandoverItem> items = HandoverLists.Items(view, cursor);
        string summary = HandoverLists.Summary(view, cursor, items);
        return items.Count == 0
            ? new HandoverAnswer(summary, items, cursor with { Index = -1 })
            : new HandoverAnswer(Sentence.Join(summary, items[0].Text), items, cursor);
    }

    private static HandoverAnswer Move(HandoverView view, HandoverCursor cursor, int by)
    {
        IReadOnlyList<HandoverItem> items = HandoverLists.Items(view, cursor);
        if (items.Count == 0)
        {
            return new HandoverAnswer("Nothing on this list.", items, cursor);
        }

        int index = Math.Max(cursor.Index, 0) + (cursor.Index < 0 && by > 0 ? 0 : by);
        return index switch
        {
            < 0 => new HandoverAnswer("This is the first. " + items[0].Text, items, cursor with { Index = 0 }),
            _ when index >= items.Count => new HandoverAnswer("That is all.", items, cursor with { Index = items.Count - 1 }),
            _ => new HandoverAnswer(items[index].Text, items, cursor with { Index = index }),
        };
    }

    private static HandoverAnswer Details(HandoverView view, HandoverCursor cursor)
    {
        IReadOnlyList<HandoverEntry> entries = HandoverLists.Entries(view, cursor);
        IReadOnlyList<HandoverItem> items = HandoverLists.Items(view, cursor);
        return cursor.Index >= 0 && cursor.Index < entries.Count
            ? new HandoverAnswer(HandoverTexts.LastValues(entries[cursor.Index]), items, cursor)
            : new HandoverAnswer("Details of which room? Say the room.", items, cursor);
    }

    private static HandoverAnswer LastPulse(HandoverView view, HandoverCursor cursor)
    {
        IReadOnlyList<HandoverEntry> entries = HandoverLists.Entries(view, cursor);
        HandoverEntry? asked = cursor.Index >= 0 && cursor.Index < entries.Count
            ? entries[cursor.Index]
            : view.Entries.Where(e => e.Last.ContainsKey(VitalSign.Pulse))
                .OrderByDescending(e => e.Last[VitalSign.Pulse].Confirmed.By.MeasuredAt).FirstOrDefault();
        return asked switch
        {
            null => new HandoverAnswer("No pulse was taken.", [], cursor),
            _ when !asked.Last.ContainsKey(VitalSign.Pulse) =>
                new HandoverAnswer($"{HandoverTexts.Place(asked.Resident)}: pulse was not taken.", [], cursor),
            _ => One(asked, cursor),
        };
    }

    private static HandoverAnswer One(HandoverEntry entry, HandoverCursor cursor)
    {
        string text = $"{HandoverTexts.Place(entry.Resident)}: {HandoverTexts.LastValue(entry.Last[VitalSign.Pulse], entry.Resident)}.";
        return new HandoverAnswer(text, [new HandoverItem(entry.Resident.Room, entry.Resident.Bed, entry.Rank, text)], cursor);
    }
}
