using System.Globalization;
using HandsFree.Language.Numbers;

namespace HandsFree.Speech.Neural;

/// <summary>How the model writes spoken words: as a book would, "Blood pressure 118 over 89.", "98.6", "94%", "1-18",
/// "October 25th, 1945". The grammars know only spoken words; the written forms are derived here, word by word.</summary>
internal static class Writing
{
    private static readonly string[] WordGaps = [" ", ", ", ". ", ": ", "; "];
    private static readonly string[] FigureGaps = [" ", ", ", ". ", "-", "", ",", ":", " - "];
    private static readonly Dictionary<(string, Joint), WrittenForm[]> Known = [];
    private static readonly Lock Gate = new();

    /// <summary>What else the model writes for a word, seen in its free transcripts or a common variant of spelling.</summary>
    private static readonly Dictionary<string, string[]> Variants = new()
    {
        ["a"] = ["A", "eh"],
        ["b"] = ["B", "be", "bee"],
        ["c"] = ["C", "see", "sea"],
        ["d"] = ["D", "dee"],
        ["i"] = ["I"],
        ["i'm"] = ["I'm", "I’m"],
        ["it's"] = ["it’s", "its"],
        ["that's"] = ["that’s", "thats"],
        ["oh"] = ["O", "o"],
        ["armpit"] = ["arm pit", "arm-pit"],
        ["forehead"] = ["for head"],
        ["handover"] = ["hand over", "hand-over"],
        ["goodbye"] = ["good bye", "good-bye", "bye"],
        ["recheck"] = ["re-check", "re check"],
        ["undo"] = ["un-do"],
        ["liter"] = ["litre"],
        ["liters"] = ["litres"],
        ["kilos"] = ["kilo"],
        ["temp"] = ["temp."],
        ["respirations"] = ["Respiration's", "respiration"],
    };

    /// <summary>The last full stop and its kin; the empty one included.</summary>
    public static IReadOnlyList<string> Endings { get; } = ["", ".", "!", "?", "..."];

    /// <summary>Whether a sentence may end after this joint.</summary>
    public static bool CanEnd(Joint joint) => joint is Joint.Letters or Joint.TensLetters or Joint.TensFigures or Joint.HundredFigures or Joint.Figure or Joint.Figures;

    /// <summary>All ways to write the word after the joint; none where it can't follow.</summary>
    public static WrittenForm[] Of(string word, Joint before)
    {
        lock (Gate)
        {
            if (!Known.TryGetValue((word, before), out WrittenForm[]? forms))
            {
                forms = [.. Forms(word, before).Distinct()];
                Known.Add((word, before), forms);
            }

            return forms;
        }
    }

    private static IEnumerable<WrittenForm> Forms(string word, Joint before)
    {
        NumberWord? number = NumberWord.Of(word);
        return before switch
        {
            Joint.TensOpen => number is { } n ? AfterTens(n) : [],
            Joint.HundredOpen => number is { } n ? AfterHundred(n) : word == "and" ? [new("", Joint.HundredOpen)] : [],
            Joint.AHundred => word == "hundred" ? Gapped(Joint.Letters, "100", Joint.HundredFigures) : [],
            Joint.TensFigures when number?.Kind is NumberKind.Digit or NumberKind.OrdinalDigit && number.Value.Value > 0 => [],
            Joint.HundredFigures when number is not null && number.Value.Kind != NumberKind.Hundred => [],
            Joint.HundredFigures when word == "and" => [],
            Joint.Sign => number is { } n ? Figures(n).Where(f => f.Joint != Joint.Letters) : [],
            _ => InLetters(word, number, before).Concat(number is { } n ? InFigures(n, before) : Signs(word, before)),
        };
    }

    private static IEnumerable<WrittenForm> InLetters(string word, NumberWord? number, Joint before)
    {
        Joint joint = number?.Kind == NumberKind.Tens ? Joint.TensLetters : Joint.Letters;
        foreach (string text in (string[])[word, .. Variants.GetValueOrDefault(word, [])])
        {
            string capital = string.Create(CultureInfo.InvariantCulture, $"{char.ToUpperInvariant(text[0])}{text[1..]}");
            foreach (string gap in before == Joint.Start ? [" ", ""] : WordGaps)
            {
                yield return new(gap + text, joint);
                yield return new(gap + capital, joint);
            }

            if (before == Joint.TensLetters && number?.Kind is NumberKind.Digit or NumberKind.OrdinalDigit)
            {
                yield return new("-" + text, joint);
            }
        }
    }

    private static IEnumerable<WrittenForm> InFigures(NumberWord number, Joint before)
    {
        if (number.Kind == NumberKind.Hundred)
        {
            return before == Joint.Figure ? [new("00", Joint.HundredFigures), new("", Joint.HundredOpen)] : [];
        }

        string[] gaps = before switch
        {
            Joint.Start => [" ", ""],
            Joint.Figure or Joint.Figures or Joint.TensFigures => FigureGaps,
            _ => WordGaps,
        };
        return gaps.SelectMany(gap => Figures(number).Select(f => f with { Text = gap + f.Text }));
    }

    /// <summary>The word in figures with nothing before it.</summary>
    private static WrittenForm[] Figures(NumberWord number) => number.Kind switch
    {
        NumberKind.Digit => [new(Text(number.Value), Joint.Figure)],
        NumberKind.Teen => [new(Text(number.Value), Joint.Figures)],
        NumberKind.Tens => [new(Text(number.Value), Joint.TensFigures), new(Text(number.Value / 10), Joint.TensOpen)],
        NumberKind.OrdinalDigit or NumberKind.OrdinalTeen or NumberKind.OrdinalTens =>
            [new(Text(number.Value), Joint.Figures), new(Text(number.Value) + Suffix(number.Value), Joint.Figures)],
        _ => [],
    };

    private static WrittenForm[] AfterTens(NumberWord number) => number.Kind switch
    {
        NumberKind.Digit when number.Value > 0 => [new(Text(number.Value), Joint.Figures)],
        NumberKind.OrdinalDigit => [new(Text(number.Value), Joint.Figures), new(Text(number.Value) + Suffix(number.Value), Joint.Figures)],
        _ => [],
    };

    private static WrittenForm[] AfterHundred(NumberWord number) => number.Kind switch
    {
        NumberKind.Digit when number.Value > 0 => [new("0" + Text(number.Value), Joint.Figures)],
        NumberKind.Teen or NumberKind.Tens => Figures(number),
        _ => [],
    };

    private static IEnumerable<WrittenForm> Signs(string word, Joint before)
    {
        bool many = before is Joint.Figures or Joint.TensFigures or Joint.HundredFigures;
        bool figures = many || before == Joint.Figure;
        return word switch
        {
            "a" => before is Joint.Letters or Joint.Start ? [new("", Joint.AHundred)] : [],
            "point" when figures => [new(".", Joint.Sign), new(" .", Joint.Sign)],
            "over" when figures => [new("/", Joint.Sign), new(" / ", Joint.Sign)],

            // Not after a single figure: "1-18" is one eighteen.
            "to" when many => [new("-", Joint.Sign), new(" - ", Joint.Sign), new("–", Joint.Sign)],
            "percent" when figures => [new("%", Joint.Letters), new(" %", Joint.Letters), new(" per cent", Joint.Letters)],
            "degrees" when figures => [new("°", Joint.Letters), new(" °", Joint.Letters)],
            "fahrenheit" => [new("F", Joint.Letters), new(" F", Joint.Letters)],
            "celsius" => [new("C", Joint.Letters), new(" C", Joint.Letters)],
            "liter" or "liters" when figures => [new("L", Joint.Letters), new(" L", Joint.Letters)],
            _ => [],
        };
    }

    private static IEnumerable<WrittenForm> Gapped(Joint before, string text, Joint joint) =>
        (before == Joint.Start ? ["", " "] : WordGaps).Select(gap => new WrittenForm(gap + text, joint));

    private static string Text(int value) => value.ToString(CultureInfo.InvariantCulture);

    private static string Suffix(int value) => (value % 10, value / 10) switch
    {
        (1, not 1) => "st",
        (2, not 1) => "nd",
        (3, not 1) => "rd",
        _ => "th",
    };
}
