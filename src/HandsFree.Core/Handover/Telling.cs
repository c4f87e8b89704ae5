using HandsFree.Core.Reports;

namespace HandsFree.Core.Handover;

/// <summary>"Told the nurse", of the resident who was named last. It is written where it is said a second time, straight after the first:
/// a word that was heard wrongly tells nobody.</summary>
internal static class Telling
{
    public static HandoverAnswer Answer(HandoverView view, Told whom, HandoverCursor cursor)
    {
        HandoverAnswer Say(string text) => new(text, HandoverLists.Items(view, cursor), cursor with { SaidAsTold = null });
        if (HandoverAnswerer.InHand(view, cursor) is not { Reports.Count: > 0 } entry)
        {
            return Say("Which report? Say open reports, then next.");
        }

        string place = HandoverTexts.Place(entry.Resident);
        if (whom != Told.Nurse)
        {
            return Say($"{place}: that the {ReportMoves.Name(whom)} was told is entered by a nurse, with the keys.");
        }

        IReadOnlyList<Report> untold = [.. entry.Reports.Where(r => r.NurseTold is null)];
        return untold switch
        {
            [] => Say($"{place}: nurse told at {HandoverTexts.Time(entry.Reports[0].NurseTold!.ToldAt)} already."),
            _ when cursor.SaidAsTold != entry.Resident.Id =>
                Say($"{place}: nurse told? Say it again to keep it.") with { Cursor = cursor with { SaidAsTold = entry.Resident.Id } },
            _ => Say($"{place}: nurse told.") with { NurseTold = untold },
        };
    }
}
