namespace HandsFree.Language.Numbers;

/// <summary>The kinds of English number words; they differ in how they join into a numeral.</summary>
public enum NumberKind
{
    /// <summary>zero, oh, one … nine.</summary>
    Digit,

    /// <summary>ten … nineteen.</summary>
    Teen,

    /// <summary>twenty … ninety.</summary>
    Tens,

    /// <summary>hundred.</summary>
    Hundred,

    /// <summary>first … ninth.</summary>
    OrdinalDigit,

    /// <summary>tenth … nineteenth.</summary>
    OrdinalTeen,

    /// <summary>twentieth, thirtieth.</summary>
    OrdinalTens,
}

/// <summary>One number word.</summary>
/// <param name="Kind">How it joins.</param>
/// <param name="Value">0 to 100.</param>
public readonly record struct NumberWord(NumberKind Kind, int Value)
{
    private static readonly Dictionary<string, NumberWord> Known = Make();

    /// <summary>The number word, or null for any other word.</summary>
    public static NumberWord? Of(string word) => Known.TryGetValue(word, out NumberWord known) ? known : null;

    /// <summary>The word for a digit, 0 to 9: "zero" … "nine".</summary>
    public static string Digit(int value) => Digits[value];

    private static readonly string[] Digits = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];

    private static Dictionary<string, NumberWord> Make()
    {
        var known = new Dictionary<string, NumberWord> { ["oh"] = new(NumberKind.Digit, 0), ["hundred"] = new(NumberKind.Hundred, 100) };
        void Add(NumberKind kind, int first, int step, string words)
        {
            foreach (string word in words.Split(' '))
            {
                known.Add(word, new(kind, first));
                first += step;
            }
        }

        Add(NumberKind.Digit, 0, 1, "zero one two three four five six seven eight nine");
        Add(NumberKind.Teen, 10, 1, "ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen");
        Add(NumberKind.Tens, 20, 10, "twenty thirty forty fifty sixty seventy eighty ninety");
        Add(NumberKind.OrdinalDigit, 1, 1, "first second third fourth fifth sixth seventh eighth ninth");
        Add(NumberKind.OrdinalTeen, 10, 1, "tenth eleventh twelfth thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth");
        Add(NumberKind.OrdinalTens, 20, 10, "twentieth thirtieth");
        return known;
    }
}
