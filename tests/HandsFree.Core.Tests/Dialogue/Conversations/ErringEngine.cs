using HandsFree.Core.Dialogue;
using HandsFree.Core.Hearings;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Tests.Dialogue.Conversations;

/// <summary>An engine that errs as engines do: it is doubtful, it has next-best meanings, it is sure and wrong, it hears a part or nothing, and
/// what it heard wrongly once it hears wrongly again in the same way.</summary>
/// <param name="chance">The seed of all of it.</param>
/// <param name="sayings">What it may hear instead.</param>
internal sealed class ErringEngine(Random chance, AnySaying sayings)
{
    private readonly Dictionary<Meaning, Meaning> mistakes = [];

    /// <summary>What is heard of something that was said.</summary>
    /// <param name="at">When the speech began.</param>
    /// <param name="said">What was really said.</param>
    /// <param name="yesIsHeard">Answers are heard rightly, or not at all.</param>
    public DialogueEvent Hear(DateTimeOffset at, Meaning said, bool yesIsHeard = false)
    {
        bool safe = yesIsHeard && said is Meaning.Answer;
        return chance.Next(20) switch
        {
            0 => new DialogueEvent.NotAReading(at),
            1 => chance.Next(2) == 0 ? new DialogueEvent.NothingHeard(at) : new DialogueEvent.PartOfAReading(at),
            2 or 3 when !safe => Of(at, Mistaken(said), said, Between(0.4, 0.99)),
            4 or 5 or 6 => Of(at, said, Mistaken(said), Between(0.35, 0.75)),
            7 => Of(at, said, null, 1) with { Typed = true, LevelDecibels = null, Words = Words(said, digits: chance.Next(2) == 0) },
            _ => Of(at, said, chance.Next(3) == 0 ? Mistaken(said) : null, Between(0.8, 0.999)),
        };
    }

    /// <summary>What this is heard as when it is heard wrongly: mostly the same each time.</summary>
    public Meaning Mistaken(Meaning said)
    {
        if (!mistakes.TryGetValue(said, out Meaning? mistake) || chance.Next(4) == 0)
        {
            mistakes[said] = mistake = Other(said);
        }

        return mistake;
    }

    private DialogueEvent.Utterance Of(DateTimeOffset at, Meaning heard, Meaning? next, double probability)
    {
        double left = 1 - probability;
        List<Possible<Meaning>> all = [new(heard, probability)];
        if (next is not null && next != heard)
        {
            all.Add(new(next, Math.Min(probability, left) * Between(0.3, 1)));
        }

        if (chance.Next(4) == 0 && sayings.Anything() is var third && third != heard && third != next)
        {
            all.Add(new(third, Math.Max(0, 1 - all.Sum(p => p.Probability)) * Between(0, 0.5)));
        }

        all = [all[0], .. all.Skip(1).OrderByDescending(p => p.Probability)];
        double? margin = all.Count > 1 && all[1].Probability > 0 ? Math.Max(0, Math.Log(probability / all[1].Probability)) : null;
        return new DialogueEvent.Utterance(at, heard, Words(heard, digits: chance.Next(3) == 0))
        {
            Probability = probability,
            Margin = margin,
            // Some engines give no list, only the next one.
            Alternatives = chance.Next(5) == 0 ? [] : all,
            RunnerUp = all.Count > 1 ? all[1].Value : null,
            RunnerUpWords = all.Count > 1 ? Words(all[1].Value, digits: false) : null,
            Doubtful = probability < 0.75 && chance.Next(4) > 0,
            Unfound = chance.Next(3) == 0 ? Between(0, 0.05) : 0,
            LevelDecibels = chance.Next(12) switch { 0 => null, 1 => -50, _ => -20 },
        };
    }

    private Meaning Other(Meaning said) => said switch
    {
        Meaning.ReadingSaid r => QuantityFrom.Number(r.Reading.Value.Sign, Misheard(Spoken(r.Reading.Value)), QuantityFrom.UnitOf(r.Reading.Value)) is { } value
            ? new Meaning.ReadingSaid(r.Reading with { Value = value })
            : new Meaning.NotPossible(r.Reading.Value.Sign, Misheard(Spoken(r.Reading.Value)), "misheard"),
        Meaning.ValueAlone v => new Meaning.ValueAlone(Misheard(v.Number)),
        Meaning.Correction c => new Meaning.Correction(Misheard(c.Number)),
        Meaning.CountSaid c => new Meaning.CountSaid((int)Misheard(c.Counted)),
        Meaning.Answer a => new Meaning.Answer(!a.Yes),
        Meaning.Place p => p with { Room = (int)Misheard(p.Room) },
        _ => sayings.Anything(),
    };

    private SpokenNumber Misheard(SpokenNumber number) =>
        number.Second is { } low && chance.Next(2) == 0 ? number with { Second = Misheard(low) } : number with { First = Misheard(number.First) };

    // A teen for a ten, a digit for another, a digit lost.
    private decimal Misheard(decimal number) => (chance.Next(3), number % 100) switch
    {
        (0, >= 13 and <= 19 and var rest) => number - rest + ((rest - 10) * 10),
        (0, 30 or 40 or 50 or 60 or 70 or 80 or 90) => number - (number % 100) + 10 + (number % 100 / 10),
        (1, _) when number >= 10 => decimal.Truncate(number / 10),
        _ => Math.Max(0, number + sayings.Pick(-1, 1, -4, 4, 10, -10)),
    };

    public static SpokenNumber Spoken(Quantity value) => value switch
    {
        HeartRate v => new(v.PerMinute),
        RespiratoryRate v => new(v.PerMinute),
        OxygenSaturation v => new(v.Percent),
        PainScore v => new(v.OfTen),
        BloodPressure v => new(v.Systolic, v.Diastolic),
        BodyTemperature v => new(v.Degrees),
        BodyWeight v => new(v.Value),
        _ => throw new ArgumentOutOfRangeException(nameof(value), value, "no such quantity"),
    };

    // The dialogue asks of words only whether they are digits one by one, and whether a band number was called one.
    private string Words(Meaning meaning, bool digits) => meaning switch
    {
        Meaning.BandNumber when chance.Next(2) == 0 => "band four seven one one",
        Meaning.ReadingSaid r when digits => $"it is {DigitWords.Of(Spoken(r.Reading.Value).First)}",
        Meaning.ValueAlone v when digits => DigitWords.Of(v.Number.First),
        Meaning.Correction c when digits => $"no {DigitWords.Of(c.Number.First)}",
        _ => "one eighteen",
    };

    private double Between(double least, double most) => least + (chance.NextDouble() * (most - least));
}
