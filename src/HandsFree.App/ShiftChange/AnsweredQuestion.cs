namespace HandsFree.App.ShiftChange;

/// <summary>A question of the handover with its answer.</summary>
/// <param name="Question">As it was asked.</param>
/// <param name="Answer">The spoken text.</param>
/// <param name="Items">All lines of the list that was asked for.</param>
/// <param name="Since">From when on the list counts; null for all that the record holds.</param>
/// <param name="BeginsList">Whether the question asked for a list, rather than for the next line of one.</param>
/// <param name="IsGoodbye">Whether the listener is done.</param>
internal sealed record AnsweredQuestion(
    string Question, string Answer, IReadOnlyList<AnsweredItem> Items, DateTimeOffset? Since, bool BeginsList, bool IsGoodbye);
