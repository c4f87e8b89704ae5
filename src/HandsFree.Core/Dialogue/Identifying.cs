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
    public static Turn FindResident(this Turn turn)
    {
        Meaning.Place place = turn.Meant<Meaning.Place>();
        turn = turn.Leave("left for another room");
        IReadOnlyList<Resident> found = turn.Parts.Roster.At(place.Room, place.Bed);
        string spoken = place.Bed is { } bed ? $"room {place.Room} bed {bed.ToUpperInvariant()}" : $"room {place.Room}";
        return found.Count switch
        {
            0 => turn.Ask($"Nobody is on the list in {spoken}.", new Stage.AwaitingRoom()),
            1 => turn.AskName(found[0]),
            _ => turn.Ask($"Room {place.Room} has {Beds(found)}. Say which.", new Stage.AwaitingRoom { Asked = 1 }),
        };
    }

    public static Turn AskName(this Turn turn, Resident resident) => turn.Ask(new Stage.AwaitingName(resident));

    public static Turn CheckBirthDate(this Turn turn)
    {
        var said = turn.Meant<Meaning.BirthDate>();
        DateOnly born = turn.Stage<Stage.AwaitingSecondIdentifier>().Resident.Born;
        bool matches = born.Month == said.Month && born.Day == said.Day && (said.Year is null || said.Year == born.Year);
        return turn.Identify(matches, said.Year is null ? SecondIdentifier.BirthDayAndMonth : SecondIdentifier.BirthDate);
    }

    public static Turn CheckBandNumber(this Turn turn)
    {
        string? band = turn.Stage<Stage.AwaitingSecondIdentifier>().Resident.BandNumber;
        return turn.Identify(band is not null && band == turn.Meant<Meaning.BandNumber>().Number, SecondIdentifier.BandNumber);
    }

    public static Turn IdentityFailed(this Turn turn, Resident resident, string why, string words) =>
        turn.Write(id => new IdentificationFailed(id, turn.State.Aide, turn.At, resident.Id, why))
            .Ask(Sentence.Join(words, $"No readings for {HandoverTexts.Place(resident)[..1].ToLowerInvariant()}{HandoverTexts.Place(resident)[1..]}."), new Stage.AwaitingRoom());

    private static Turn Identify(this Turn turn, bool matches, SecondIdentifier by)
    {
        if (!matches)
        {
            return turn.TryAgain("That does not match.");
        }

        Resident resident = turn.Stage<Stage.AwaitingSecondIdentifier>().Resident;
        ResidentSet set = turn.State.Left.GetValueOrDefault(resident.Id) ?? new ResidentSet(resident);
        turn = turn.Write(id => new ResidentIdentified(id, turn.State.Aide, turn.At, resident.Id, by));
        turn = turn with { State = turn.State with { Set = set, StoppedAt = null } };
        string words = Sentence.Join("Ready.", Arms(resident));
        return set.Base() is Stage.AwaitingRecheck recheck ? turn.Ask(words, recheck) : turn.Go(set.Base()).Say(words);
    }

    private static string Arms(Resident resident) => string.Join(' ', resident.ArmsNotToBeUsed.Keys.OrderBy(a => a)
        .Select(a => a == Arm.Left ? "Do not use the left arm." : "Do not use the right arm."));

    private static string Beds(IReadOnlyList<Resident> residents) =>
        Sentence.List([.. residents.Select(r => r.Bed is { } bed ? $"bed {bed.ToUpperInvariant()}" : "a place without a bed").Order(StringComparer.Ordinal)]);
}
