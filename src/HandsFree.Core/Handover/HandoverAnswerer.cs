using HandsFree.Core.Dialogue;
using HandsFree.Core.Meanings;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Handover;

/// <summary>Answers the questions of the change of shift from a view. Pure.</summary>
public static class HandoverAnswerer
{
    /// <summary>The answer to one question from a record, with the beginning that the listener chose.</summary>
    /// <param name="record">Journal, residents, times.</param>
    /// <param name="query">The question.</param>
    /// <param name="cursor">Where the listener stands; <see cref="HandoverCursor.Start"/> at first.</param>
    public static HandoverAnswer Answer(HandoverRecord record, Meaning.Query query, HandoverCursor cursor)
    {
        if (query is not { Kind: QueryKind.Since, Since: { } said })
        {
            DateTimeOffset? since = cursor.Since ?? record.Time.Since;
            return Answer(record.View(since), query, cursor) with { Since = since };
        }

        // The list in hand again, from then on.
        DateTimeOffset from = record.Clock.Of(said, record.Time.Now ?? throw new InvalidOperationException("\"since\" needs the present moment"));
        HandoverCursor anew = cursor with { Since = from, Index = 0, SaidAsTold = null };
        HandoverAnswer answer = Begin(record.View(from), anew);
        return answer with { Text = Sentence.Join($"Since {HandoverTexts.Moment(from, record.Time.Now)}:", answer.Text), Since = from };
    }

    /// <summary>The answer to one question from a view.</summary>
    /// <param name="view">What the journal says.</param>
    /// <param name="query">The question.</param>
    /// <param name="cursor">Where the listener stands; <see cref="HandoverCursor.Start"/> at first.</param>
    public static HandoverAnswer Answer(HandoverView view, Meaning.Query query, HandoverCursor cursor)
    {
        if (query.Kind == QueryKind.Told)
        {
            return Telling.Answer(view, query.Whom ?? Reports.Told.Nurse, cursor);
        }

        cursor = cursor with { SaidAsTold = null };
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
            case QueryKind.LastValue when query.Room is null:
                return LastValue(view, query.Sign ?? VitalSign.Pulse, cursor);
            case QueryKind.SinceWhen or QueryKind.Since:
                return new HandoverAnswer(SinceWhen(view), HandoverLists.Items(view, cursor), cursor);
            case QueryKind.Goodbye:
                return new HandoverAnswer("Goodbye.", [], cursor, IsGoodbye: true);
            default:
                return Begin(view, new HandoverCursor(query.Kind, query.Room, 0) { Bed = query.Bed, Sign = query.Sign, Since = cursor.Since });
        }
    }

    private static HandoverAnswer Begin(HandoverView view, HandoverCursor cursor)
    {
        IReadOnlyList<HandoverItem> items = HandoverLists.Items(view, cursor);
        string summary = HandoverLists.Summary(view, cursor, items);
        // Of a room without a bed everybody there is answered for: one bed alone would be taken for the whole room.
        if (cursor is { Asked: QueryKind.LastValue, Bed: null } && items.Count > 1)
        {
            return new HandoverAnswer(string.Join(' ', items.Select(i => i.Text)), items, cursor);
        }

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
        IReadOnlyList<HandoverItem> items = HandoverLists.Items(view, cursor);
        return InHand(view, cursor) is { } entry
            ? new HandoverAnswer(HandoverTexts.Details(entry), items, cursor)
            : new HandoverAnswer("Details of which room? Say the room.", items, cursor);
    }

    // Of the resident in hand; where nobody is, the reading that was taken last in the home.
    private static HandoverAnswer LastValue(HandoverView view, VitalSign sign, HandoverCursor cursor)
    {
        HandoverEntry? asked = InHand(view, cursor)
            ?? view.Entries.Where(e => e.Last.ContainsKey(sign)).MaxBy(e => e.Last[sign].Confirmed.By.MeasuredAt);
        if (asked is null)
        {
            return new HandoverAnswer($"No {SignNames.Of(sign)} was taken.", [], cursor);
        }

        string text = HandoverTexts.LastValue(asked, sign, view.Time);
        return new HandoverAnswer(text, [HandoverLists.Item(asked, text)], cursor);
    }

    /// <summary>The resident who was named last, or null.</summary>
    internal static HandoverEntry? InHand(HandoverView view, HandoverCursor cursor) =>
        cursor.Index >= 0 ? HandoverLists.Entries(view, cursor).ElementAtOrDefault(cursor.Index) : null;

    private static string SinceWhen(HandoverView view) => view.Time.Since is { } since
        ? $"Since {HandoverTexts.Moment(since, view.Time.Now)}."
        : "Since the record began.";
}
