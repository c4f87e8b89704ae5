using HandsFree.App.Homes;
using HandsFree.Core.Handover;
using HandsFree.Core.Meanings;

namespace HandsFree.App.ShiftChange;

/// <summary>Answers one question after the other; "next" and "repeat" follow on the one before.</summary>
internal sealed class HandoverDesk(Home home, HandoverRecord record)
{
    private HandoverCursor cursor = HandoverCursor.Start;

    /// <summary>The answer to a question.</summary>
    /// <param name="question">As it was asked.</param>
    /// <param name="query">What it means.</param>
    public AnsweredQuestion Answer(string question, Meaning.Query query)
    {
        HandoverAnswer answer = HandoverAnswerer.Answer(record, query, cursor);
        cursor = answer.Cursor;
        Wording wording = home.Settings.Wording;
        IReadOnlyList<AnsweredItem> items = [.. answer.Items.Select(item => new AnsweredItem(item with { Text = wording.Of(item.Text) }, Name(item)))];
        bool beginsList = query.Kind is not (
            QueryKind.Next or QueryKind.Previous or QueryKind.Repeat or QueryKind.Details or QueryKind.SinceWhen or QueryKind.Told);
        string text = answer.NurseTold.Count > 0 ? "That a nurse was told is entered by voice within a round, or with \"handsfree report told\"." : answer.Text;
        return new(question, wording.Of(text), items, answer.Since, beginsList, answer.IsGoodbye);
    }

    private string? Name(HandoverItem item) => home.Settings.NamesOnScreen ? home.Roster.ById(item.Resident)?.Name : null;
}
