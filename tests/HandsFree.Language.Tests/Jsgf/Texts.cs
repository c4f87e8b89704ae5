using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;

namespace HandsFree.Language.Tests.Jsgf;

/// <summary>Small grammars written in tests.</summary>
internal static class Texts
{
    /// <summary>A grammar named "test" with this body.</summary>
    public static Grammar Body(string body, string? rule = null, Func<string, string?>? import = null) =>
        Grammar.Parse("#JSGF V1.0;\ngrammar test;\n" + body, "test.jsgf", rule, import);

    /// <summary>All its sentences, in the order of the grammar.</summary>
    public static IEnumerable<string> Sentences(string body, string? rule = null) =>
        Sampler.All(Body(body, rule)).Select(s => s.Words);

    /// <summary>What a sentence means there, as JSON; the only meaning.</summary>
    public static string Meaning(string body, string words) => Matcher.Match(Body(body), words).Single().ToString();
}
