using HandsFree.App.Homes;
using HandsFree.Core.Handover;
using HandsFree.Core.Meanings;

namespace HandsFree.App.ShiftChange;

/// <summary>Answers one question after the other; "next" and "repeat" follow on the one before.</summary>
internal sealed class HandoverDesk(HandoverView view, HomeSettings settings, DateTimeOffset since, OverdueItems overdue)
{
    private HandoverCursor cursor = HandoverCursor.Start;

    /// <summary>The answer to a question.</summary>
    /// <param name="question">As it was asked.</param>
    /// <param name="query">What it means.</param>
    public AnsweredQuestion Answer(string question, Meaning.Query query)
    {
        HandoverAnswer answer = HandoverAnswerer.Answer(view, query, cursor);
        cursor = answer.Cursor;
        IReadOnlyList<AnsweredItem> items =
        [
            .. answer.Items.Select(item => new AnsweredItem(item with { Text = settings.Wording.Of(item.Text) }, overdue.Has(item))),
        ];
        bool beginsList = query.Kind is not (QueryKind.Next or QueryKind.Previous or QueryKind.Repeat or QueryKind.Details);
        return new(question, settings.Wording.Of(answer.Text), items, since, beginsList, answer.IsGoodbye);
    }
}
