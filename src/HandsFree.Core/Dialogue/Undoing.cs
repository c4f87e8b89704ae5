using HandsFree.Core.Handover;
using HandsFree.Core.Journal;
using HandsFree.Core.Reports;

namespace HandsFree.Core.Dialogue;

/// <summary>Undo: the last thing saved for this resident, with the recheck or report that came of it, is marked as entered in error. A report
/// that somebody was told of, or that rests on other readings too, stays and is annotated. Nothing leaves the journal.</summary>
internal static class Undoing
{
    public static Turn Ask(Turn turn) => turn.Set.Saved.Count == 0
        ? turn.Say("Nothing is saved for this resident.")
        : turn.Ask(new Stage.AwaitingUndo(turn.Set.Saved[^1]));

    public static Turn Undo(Turn turn)
    {
        ResidentSet set = turn.Set;
        Turn removed = TakeBack(turn, turn.Stage<Stage.AwaitingUndo>().Item, "undo", out string told);
        return removed.Save(Sentence.Join("Removed.", told), removed.Set.Base(), beforeUndo: set);
    }

    /// <summary>Asks whether all that was saved since the resident was identified is another's.</summary>
    public static Turn AskWrongResident(Turn turn)
    {
        ResidentSet set = turn.Set;
        int saved = set.Saved.Count - set.SavedBefore;
        string place = Sentence.Small(HandoverTexts.Place(set.Resident));
        return saved <= 0
            ? turn.Leave("wrong resident").Ask("Nothing was saved for this visit.", new Stage.AwaitingRoom())
            : turn.Ask(new Stage.AwaitingAnswer(Question.WrongResident, $"Take back {DigitWords.Of(saved)} of {place}?"));
    }

    /// <summary>Nothing of this visit stands any more; room and bed are asked for.</summary>
    public static Turn TakeBackVisit(Turn turn)
    {
        ResidentSet set = turn.Set;
        Turn removed = turn;
        string told = "";
        foreach (SavedItem item in set.Saved.Skip(set.SavedBefore).Reverse())
        {
            removed = TakeBack(removed, item, "wrong resident", out string stays);
            told = stays.Length > 0 ? stays : told;
        }

        return removed.Leave("wrong resident").Save(Sentence.Join("Removed.", told, "Room and bed of the right resident, then measure or say it again."), new Stage.AwaitingRoom(), beforeUndo: set);
    }

    private static Turn TakeBack(Turn turn, SavedItem item, string why, out string told)
    {
        ResidentSet set = turn.Set;
        List<Report> reports = [.. Reports(turn, item)];
        List<Report> kept = reports.FindAll(report => IsHeard(report) || !(item.Events.Contains(report.Id) || report.Readings.All(item.Events.Contains)));
        IEnumerable<string> gone = item.Events.Union(reports.Select(report => report.Id)).Except(kept.Select(report => report.Id));
        turn = gone.Aggregate(turn, (t, one) => t.Write(id => new EnteredInError(id, t.State.Aide, t.At, set.Resident.Id, one, why)));
        turn = kept.Aggregate(turn, (t, report) => t.Write(id => new ReportNoted(
            id, t.State.Aide, t.At, set.Resident.Id, report.Id, "a reading that this rests on was removed by the aide")));
        ResidentSet without = Without(set, item);
        without = without with { Reported = without.Reported.SetItems(kept.Where(r => r.Sign is not null).Select(r => KeyValuePair.Create(r.Sign!.Value, r.Urgency))) };
        told = kept.Count > 0 ? "The report stays, with a note. Tell the nurse." : "";
        return turn.With(without);
    }

    // What came of the item alone; what was said and done at the bed since stays.
    private static ResidentSet Without(ResidentSet set, SavedItem item)
    {
        ResidentSet before = item.Before;
        bool testing = set.Posture != PostureStep.None;
        return set with
        {
            Saved = before.Saved,
            Waiting = before.Waiting,
            RechecksAsked = before.RechecksAsked,
            Chains = before.Chains,
            Reported = before.Reported,
            Open = set.Open.AddRange(before.Open.Except(set.Open)),
            NotTaken = before.NotTaken,
            AskAgain = set.AskAgain.Union(before.AskAgain).Intersect(before.NotTaken.Keys),
            CouldNotObtain = before.CouldNotObtain,
            Posture = testing ? before.Posture : set.Posture,
            StoodAt = testing ? before.StoodAt : set.StoodAt,
            PostureAsked = testing ? before.PostureAsked : set.PostureAsked,
        };
    }

    // Reports that came of it, also when she was left ("recheck not done"), and stand.
    private static IEnumerable<Report> Reports(Turn turn, SavedItem item) => ReportBook.Of(turn.Known()).All.Where(report =>
        report.Resident == turn.Set.Resident.Id && (item.Events.Contains(report.Id) || report.Readings.Contains(item.Events[0])));

    // Somebody may have acted on it.
    private static bool IsHeard(Report report) => report is not { Told: [], Acknowledged: null, Closed: null, Plans: [] };
}
