using HandsFree.Speech.Sphinx;
using Xunit;

namespace HandsFree.Scenarios.CommandLine;

/// <summary>The engine that needs nothing but packages of the system.</summary>
internal static class SphinxHere
{
    /// <summary>Skips the test, with the reason, where it can't hear.</summary>
    public static void Needed() => Assert.SkipWhen(SphinxRecognizer.WhyNot(new SphinxOptions()) is not null, SphinxRecognizer.WhyNot(new SphinxOptions()) ?? "");
}
