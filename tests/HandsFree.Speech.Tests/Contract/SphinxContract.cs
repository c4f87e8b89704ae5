using HandsFree.Language.Grammars;
using HandsFree.Speech.Sphinx;
using HandsFree.TestKit;
using Xunit;

namespace HandsFree.Speech.Tests.Contract;

public sealed class SphinxContract : RecognizerContract
{
    private static readonly Grammar Readings = Grammar.Load(Path.Combine(Shared.Repository, "grammars", "readings.jsgf"));
    private static readonly Grammar Colours = Grammar.Parse("#JSGF V1.0; grammar colours; public <colour> = green {'g'} | yellow {'y'} | purple {'p'};", "colours.jsgf");

    protected override Grammar Fitting => Readings;

    protected override Grammar Unlike => Colours;

    protected override string Meaning => """{"kind": "pulse", "value": 72}""";

    protected override IRecognizer Start()
    {
        Assert.SkipWhen(SphinxRecognizer.WhyNot(new()) is not null, SphinxRecognizer.WhyNot(new()) ?? "");
        return new SphinxRecognizer(new());
    }

    protected override float[] Clip() => Spoken.ByFlite("pulse seventy two");
}
