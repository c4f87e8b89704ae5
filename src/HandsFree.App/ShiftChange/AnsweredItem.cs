using HandsFree.Core.Handover;

namespace HandsFree.App.ShiftChange;

/// <summary>One line of an answer.</summary>
/// <param name="Item">Room, bed, rank, text.</param>
/// <param name="Name">The resident's name where the home shows names.</param>
internal sealed record AnsweredItem(HandoverItem Item, string? Name)
{
    /// <summary>The rank's words.</summary>
    public string Rank => Item.Rank switch
    {
        HandoverRank.ReportNow => "report now",
        HandoverRank.ReportThisShift => "report this shift",
        HandoverRank.RecheckWaiting => "recheck waiting",
        HandoverRank.Acknowledged => "acknowledged",
        HandoverRank.NotTaken => "not taken",
        HandoverRank.LeftOpen => "left open",
        HandoverRank.Begun => "begun",
        HandoverRank.NothingYet => "nothing yet",
        HandoverRank.InOrder => "in order",
        _ => throw new InvalidOperationException($"no such rank: {Item.Rank}"),
    };
}
