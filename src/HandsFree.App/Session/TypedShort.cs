namespace HandsFree.App.Session;

/// <summary>Short forms that are usual where vital signs are written by hand (common practice, no source), and words that mean nothing.</summary>
internal static class TypedShort
{
    private static readonly Dictionary<string, string> Forms = new(StringComparer.OrdinalIgnoreCase)
    {
        ["out of one zero"] = "out of ten",
        ["o two"] = "oxygen",
        ["spo two"] = "oxygen",
        ["hr"] = "heart rate",
        ["rr"] = "respirations",
        ["resp"] = "respirations",
        ["ra"] = "room air",
        ["l"] = "liters",
        ["lpm"] = "liters",
        ["lbs"] = "pounds",
        ["lb"] = "pounds",
        ["kg"] = "kilograms",
    };

    // "Regular" is the normal case. By voice it is not listened for: who says "irregular" must never be heard as the other.
    // None of a guess ("about", "so" in "or so"), of a bed ("a"), of a refusal.
    private static readonly HashSet<string> Fillers = new(StringComparer.OrdinalIgnoreCase)
    {
        "okay", "ok", "um", "uh", "er", "well", "please", "thanks", "the", "her", "his", "my", "is", "now", "today", "and", "regular", "even",
    };

    /// <summary>Spoken words for the short forms.</summary>
    /// <param name="words">Words parted by one blank, figures as digit words.</param>
    public static string Written(string words) => Forms.Aggregate($" {words} ", (text, form) =>
        text.Replace($" {form.Key} ", $" {form.Value} ", StringComparison.OrdinalIgnoreCase)).Trim();

    /// <summary>The words without those that mean nothing.</summary>
    public static string WithoutFillers(string words) => string.Join(' ', words.Split(' ').Where(w => !Fillers.Contains(w)));
}
