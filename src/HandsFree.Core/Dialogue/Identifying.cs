using System.Globalization;
using HandsFree.Core.Handover;
using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Dialogue;

/// <summary>Room and bed, the name agreed, a second identifier: no match, no readings (safety 9).</summary>
internal static class Identifying
{
    /// <summary>A place was named: leaves whoever is in hand and asks for the name.</summary>
    public static Turn FindResident(this Turn turn) => turn.FindResident(turn.Meant<Meaning.Place>());

    /// <inheritdoc cref="FindResident(Turn)"/>
    /// <param name="turn">The turn.</param>
    /// <param name="place">Room and bed.</param>
    public static Turn FindResident(this Turn turn, Meaning.Place place)
    {
        IReadOnlyList<Resident> found = turn.Parts.Roster.At(place.Room, place.Bed);
        if (turn.State.Suspended is { Set: { } set } && found is [var same] && same.Id == set.Resident.Id)
        {
            return turn.AskName(same, born: place.Born); // she whose round was cut off here, named by her place
        }

        turn = turn.LeaveNaming("left for another room", out string open);
        string spoken = place.Bed is { } bed ? $"room {place.Room} bed {bed.ToUpperInvariant()}" : $"room {place.Room}";
        return found.Count switch
        {
            0 => turn.Ask(Sentence.Join(open, $"Nobody is on the list in {spoken}.", Moved(turn, place)), new Stage.AwaitingRoom()),
            1 => turn.AskName(found[0], open, place.Born),
            _ => turn.Go(new Stage.AwaitingRoom { Room = place.Room }).Say(Sentence.Join(open, $"Room {place.Room} has {Beds(found)}. Which bed?")),
        };
    }

    public static Turn AskName(this Turn turn, Resident resident, string before = "", Meaning.BirthDate? born = null) =>
        turn.Ask(before, new Stage.AwaitingName(resident) { Born = born, Note = Note(resident, turn.Today()) });

    /// <summary>The number on band or photo. Digits without a label, the private way, may be day and month of birth too: month and day
    /// of two digits each.</summary>
    public static Turn CheckDigits(this Turn turn)
    {
        Resident resident = turn.Stage<Stage.AwaitingSecondIdentifier>().Resident;
        string digits = turn.Meant<Meaning.BandNumber>().Number;
        if (resident.BandNumber == digits)
        {
            return turn.Identify(true, SecondIdentifier.BandNumber);
        }

        bool labelled = turn.Said.Words.StartsWith("band", StringComparison.OrdinalIgnoreCase)
            || turn.Said.Words.StartsWith("number", StringComparison.OrdinalIgnoreCase);
        bool birthday = !labelled && digits == resident.Born.ToString("MMdd", CultureInfo.InvariantCulture);
        return birthday ? turn.IdentifyByBirth(SecondIdentifier.BirthDayAndMonth) : turn.Identify(false, SecondIdentifier.BandNumber);
    }

    public static Turn CheckBirthDate(this Turn turn) => turn.CheckBirthDate(turn.Meant<Meaning.BirthDate>());

    /// <summary>Compares a birthday.</summary>
    /// <param name="turn">The turn.</param>
    /// <param name="said">The birthday.</param>
    public static Turn CheckBirthDate(this Turn turn, Meaning.BirthDate said)
    {
        DateOnly born = turn.Stage<Stage.AwaitingSecondIdentifier>().Resident.Born;
        bool matches = born.Month == said.Month && born.Day == said.Day && (said.Year is null || said.Year == born.Year);
        SecondIdentifier by = said.Year is null ? SecondIdentifier.BirthDayAndMonth : SecondIdentifier.BirthDate;
        return matches ? turn.IdentifyByBirth(by) : turn.Identify(false, by);
    }

    public static Turn IdentityFailed(this Turn turn, Resident resident, string why, string words) =>
        turn.Leave(why).Write(id => new IdentificationFailed(id, turn.State.Aide, turn.At, resident.Id, why))
            .Ask(Sentence.Join(words, $"No readings for {HandoverTexts.Place(resident)[..1].ToLowerInvariant()}{HandoverTexts.Place(resident)[1..]}."), new Stage.AwaitingRoom());

    // Twins, and others with whom she could be confused: the birthday tells nothing.
    private static Turn IdentifyByBirth(this Turn turn, SecondIdentifier by) =>
        turn.Parts.Roster.BirthdayTellsApart(turn.Stage<Stage.AwaitingSecondIdentifier>().Resident)
            ? turn.Identify(true, by)
            : turn.TryAgain("Two have this birthday. Say band and its number.");

    private static Turn Identify(this Turn turn, bool matches, SecondIdentifier by)
    {
        if (!matches)
        {
            return turn.TryAgain("That does not match.");
        }

        Resident resident = turn.Stage<Stage.AwaitingSecondIdentifier>().Resident;
        if (turn.State.Suspended is { Set: not null } suspended)
        {
            return Resumption.TakeBack(turn.Write(id => new ResidentIdentified(id, turn.State.Aide, turn.At, resident.Id, by)), suspended);
        }

        ResidentSet set = turn.SetOf(resident);
        set = set with { AskAgain = [.. set.NotTaken.Where(n => MayBeAskedAgain(n.Value)).Select(n => n.Key)], RestingSince = null, SavedBefore = set.Saved.Count };
        turn = turn.Write(id => new ResidentIdentified(id, turn.State.Aide, turn.At, resident.Id, by));
        turn = turn with { State = turn.State with { Set = set, StoppedAt = null } };
        turn = RestClock.Begin(set.Waiting.Aggregate(turn, StartRest));
        set = turn.Set;
        string words = Sentence.Join("Ready.", Arms(resident), Again(set));
        return set.Base() is Stage.AwaitingRecheck recheck ? turn.Ask(words, recheck)
            : words == "Ready." ? turn.Go(set.Base()).Do(new Effect.Play(Tone.Ready))
            : turn.Go(set.Base()).Say(words);
    }

    // A timer of that name may have been started for another resident since.
    private static Turn StartRest(Turn turn, WaitingRecheck waiting) => waiting.DueAt > turn.At
        ? turn.Do(new Effect.StartTimer(TimerNames.Recheck(waiting.Sign), waiting.DueAt - turn.At))
        : turn;

    // Who refused is not pressed.
    private static bool MayBeAskedAgain(NotTakenReason reason) => reason is not (NotTakenReason.Refused or NotTakenReason.Declined);

    private static string Again(ResidentSet set) => set.AskAgain.Count == 0
        ? ""
        : $"Still to take: {Sentence.List([.. set.AskAgain.Order().Select(SignNames.Of)])}.";

    private static DateOnly Today(this Turn turn) => DateOnly.FromDateTime(turn.At.DateTime);

    private static string Note(Resident resident, DateOnly today) => Sentence.Join(
        resident.Isolation is { } isolation ? $"{Sentence.Capital(isolation)} isolation." : "",
        resident.Away is { } away && away.On(today) ? $"On the list as away, {away.Why}."
            : Roster.CameLately(resident, today) ? $"Moved here lately, from room {resident.Moved!.FromRoom}." : "");

    private static string Moved(Turn turn, Meaning.Place place) => Sentence.Join(
        [.. turn.Parts.Roster.MovedFrom(place.Room, place.Bed, turn.Today()).Select(r => $"Who was there is now in {HandoverTexts.Place(r)[..1].ToLowerInvariant()}{HandoverTexts.Place(r)[1..]}.")]);

    private static string Arms(Resident resident) => string.Join(' ', resident.ArmsNotToBeUsed.Keys.OrderBy(a => a)
        .Select(a => a == Arm.Left ? "Do not use the left arm." : "Do not use the right arm."));

    private static string Beds(IReadOnlyList<Resident> residents) =>
        Sentence.List([.. residents.Select(r => r.Bed is { } bed ? $"bed {bed.ToUpperInvariant()}" : "a place without a bed").Order(StringComparer.Ordinal)]);
}
