using HandsFree.App.Hear;
using HandsFree.App.Homes;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Rules;
using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;

namespace HandsFree.App.RuleDesk;

/// <summary>One or more readings in one line, parted by commas: "pulse 118, irregular, respirations 24, short of breath". What was said
/// about the way a reading was taken stands after it.</summary>
/// <param name="Readings">The readings, in their order; one at least.</param>
/// <param name="Symptoms">The symptoms among the parts.</param>
internal sealed record TypedSet(IReadOnlyList<Reading> Readings, IReadOnlySet<string> Symptoms)
{
    /// <summary>The set, or one line that says which part is not understood.</summary>
    public static (TypedSet? Set, string? Error) Read(string text, Home home, GrammarShelf shelf)
    {
        List<Reading> readings = [];
        HashSet<string> symptoms = [];
        foreach (string part in text.Split([',', ';'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            if (Core.Rules.Symptoms.All.FirstOrDefault(s => string.Equals(s, part, StringComparison.OrdinalIgnoreCase)) is { } symptom)
            {
                symptoms.Add(symptom);
                continue;
            }

            switch (Understood(part, home, shelf.Of("readings")))
            {
                case Meaning.ReadingSaid said:
                    readings.Add(said.Reading);
                    break;
                case Meaning.Qualifier said when readings.Count > 0:
                    readings[^1] = With(readings[^1], said.How);
                    break;
                case Meaning.Counting { Word: CountWord.Uneven } when readings is [.., { Value: HeartRate } pulse]:
                    readings[^1] = With(pulse, new Circumstances { Uneven = true });
                    break;
                case Meaning.Counting { Word: CountWord.ThirtySeconds or CountWord.SixtySeconds } count when readings is [.., { Value: HeartRate or RespiratoryRate } counted]:
                    readings[^1] = With(counted, new Circumstances { CountedSeconds = count.Word == CountWord.SixtySeconds ? 60 : 30 });
                    break;
                case Meaning.NotPossible impossible:
                    return (null, $"\"{part}\": {impossible.Why}; write a number that can be measured");
                default:
                    return (null, $"\"{part}\": that is no reading; write one such as \"pulse 72\" or \"temperature 98.6\", parted by commas from the next, or a symptom ({string.Join(", ", Core.Rules.Symptoms.All)})");
            }
        }

        return readings.Count > 0 ? (new TypedSet(readings, symptoms), null) : (null, $"\"{text}\": that is no reading; write one such as \"pulse 72\"");
    }

    private static Meaning? Understood(string part, Home home, Grammar grammar) =>
        Matcher.Match(grammar, TypedWords.Spoken(part)) is [{ } value] ? MeaningMap.From(value, home.Settings.WeightUnit) : null;

    private static Reading With(Reading reading, Circumstances how) => reading with { How = reading.How.With(how) };
}
