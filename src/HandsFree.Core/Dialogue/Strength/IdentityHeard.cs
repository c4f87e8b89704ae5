using System.Globalization;
using HandsFree.Core.Hearings;
using HandsFree.Core.Meanings;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Dialogue;

/// <summary>Room, bed and birthday are answers of a closed set: what can't be told apart and means the same resident is one answer, and a
/// place where nobody lives is rarely named.</summary>
/// <remarks>For a place only: it identifies nobody, the name is then said and agreed and a second identifier asked for. Of dates and band
/// numbers none is made likelier because it would match; a date with the year and without is one answer.</remarks>
internal static class IdentityHeard
{
    /// <summary>How likely a place where nobody lives is named, against one where somebody does (an empty bed, a resident who is new, a slip
    /// of the tongue): from no source, and far above the truth, so that the list is only believed over a close hearing.</summary>
    private const double NobodyLivesThere = 0.05;

    /// <summary>The hearing with its alternatives weighed so; the same where nothing of it is about identity.</summary>
    public static DialogueEvent.Utterance Of(Roster roster, DialogueEvent.Utterance said)
    {
        if (said.Meaning is not (Meaning.Place or Meaning.BirthDate))
        {
            return said;
        }

        Possible<Meaning>[] weighed = [.. Placed(roster, said.Alternatives)
            .GroupBy(p => Same(roster, p.Value))
            .Select(g => new Possible<Meaning>(g.Key is Meaning.Place { Born: null } ? g.Key : g.MaxBy(p => p.Probability).Value, g.Sum(p => p.Probability)))
            .OrderByDescending(p => p.Probability)];
        if (weighed.Length == 0 || weighed[0].Value is not (Meaning.Place or Meaning.BirthDate))
        {
            return said;
        }

        Possible<Meaning> best = weighed[0];
        double next = Math.Max(weighed.Length > 1 ? weighed[1].Probability : 0, said.Unfound);
        return said with
        {
            Meaning = best.Value,
            Words = best.Value == said.Meaning ? said.Words : Words(best.Value, said),
            Probability = Math.Min(1, best.Probability),
            Margin = next > 0 ? Math.Max(0, Math.Log(best.Probability / next)) : null,
            Alternatives = weighed,
        };
    }

    // The places share what they had together; nothing else gains or loses.
    private static IEnumerable<Possible<Meaning>> Placed(Roster roster, IReadOnlyList<Possible<Meaning>> alternatives)
    {
        double before = alternatives.Where(p => p.Value is Meaning.Place).Sum(p => p.Probability);
        double after = alternatives.Where(p => p.Value is Meaning.Place).Sum(Weight);
        return alternatives.Select(p => p.Value is Meaning.Place && after > 0 ? p with { Probability = before * Weight(p) / after } : p);

        double Weight(Possible<Meaning> p) =>
            p.Probability * (p.Value is Meaning.Place place && roster.At(place.Room, place.Bed).Count == 0 ? NobodyLivesThere : 1);
    }

    /// <summary>What answers have in common that lead to the same.</summary>
    private static Meaning Same(Roster roster, Meaning meaning) => meaning switch
    {
        Meaning.Place place when roster.At(place.Room, place.Bed) is [var only] => place with { Bed = only.Bed, Born = place.Born is { } born ? born with { Year = null } : null },
        Meaning.BirthDate date => date with { Year = null },
        _ => meaning,
    };

    private static string Words(Meaning meaning, DialogueEvent.Utterance said) => meaning switch
    {
        Meaning.Place { Bed: { } bed } place => string.Create(CultureInfo.InvariantCulture, $"room {place.Room} bed {bed}"),
        Meaning.Place place => string.Create(CultureInfo.InvariantCulture, $"room {place.Room}"),
        _ => said.Words,
    };
}
