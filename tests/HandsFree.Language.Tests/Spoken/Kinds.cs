using HandsFree.Language.Meaning;
using HandsFree.Language.Sentences;
using HandsFree.Language.Tests.Sentences;
using Shouldly;

namespace HandsFree.Language.Tests.Spoken;

/// <summary>Says a value of a vital sign where it can be said: as a reading, alone, and as a correction.</summary>
internal static class Kinds
{
    /// <summary>Checks that every form means the value, and nothing else, in all three places.</summary>
    public static void EachMeans(string rule, string name, string kind, SemanticValue value, IEnumerable<string> forms)
    {
        SemanticValue reading = Means.Record(("kind", new SemanticText(kind)), ("value", value));
        SemanticValue alone = Means.Record(("value", value));
        SemanticValue corrected = Means.Record(("corrected", value));
        foreach (string form in forms)
        {
            Only("readings", null, $"{name} {form}", reading);
            Only("value", rule, form, alone);
            Only("confirmation", rule, $"no {form}", corrected);
        }
    }

    /// <summary>Checks that a sentence has one meaning, this one.</summary>
    public static void Only(string grammar, string? rule, string words, SemanticValue meaning) =>
        Matcher.Match(ProductGrammars.Load(grammar, rule), words).ShouldBe([meaning], $"{grammar} {rule}: {words}");
}
