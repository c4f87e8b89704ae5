namespace HandsFree.Benchmarks.Dictations.Saying;

/// <summary>Understands a read-back by the words alone, as a person does: "Pulse, four four in thirty seconds, makes eight eight,
/// uneven".</summary>
internal static class ReadBackEar
{
    private static readonly Dictionary<string, string> Units = new()
    {
        ["Fahrenheit"] = "Fahrenheit",
        ["Celsius"] = "Celsius",
        ["pounds"] = "pounds",
        ["kilograms"] = "kilograms",
        ["percent"] = "",
    };

    /// <summary>The reading of a sentence without its stop; null where the sentence reads none back.</summary>
    public static Measured? Understand(string sentence)
    {
        string[] parts = sentence.Split(", ");
        string? sign = Measured.Signs.FirstOrDefault(s => string.Equals(s, parts[0], StringComparison.OrdinalIgnoreCase));
        if (sign is null || parts.Length < 2)
        {
            return null;
        }

        int at = parts.Length > 2 && parts[2].StartsWith("makes ", StringComparison.Ordinal) ? 2 : 1;
        string[] words = parts[at].Split(' ');
        if (words[0] == "makes")
        {
            words = words[1..];
        }
        else if (words is [.. var counted, "in", _, "seconds"])
        {
            words = counted;
        }

        // The usual unit is not said.
        string unit = sign switch { "temperature" => "Fahrenheit", "weight" => "pounds", _ => "" };
        if (Units.TryGetValue(words[^1], out string? named))
        {
            (unit, words) = (named, words[..^1]);
        }

        int over = Array.IndexOf(words, "over");
        decimal? first = DigitNames.Number(over < 0 ? words : words[..over]);
        decimal? second = over < 0 ? null : DigitNames.Number(words[(over + 1)..]);
        return first is { } number && (over < 0 || second is not null)
            ? new Measured(sign, number, second, unit, string.Join(", ", parts[(at + 1)..]))
            : null;
    }
}
