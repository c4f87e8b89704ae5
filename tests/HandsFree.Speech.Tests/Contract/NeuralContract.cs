using HandsFree.Language.Grammars;
using HandsFree.Speech.Neural;
using HandsFree.Speech.Tests.Neural;
using HandsFree.TestKit;

namespace HandsFree.Speech.Tests.Contract;

public sealed class NeuralContract : RecognizerContract
{
    private static readonly Grammar Readings = Grammar.Load(Path.Combine(Shared.Repository, "grammars", "readings.jsgf"));
    private static readonly Grammar Colours = Grammar.Parse("#JSGF V1.0; grammar colours; public <colour> = green {'g'} | yellow {'y'} | purple {'p'};", "colours.jsgf");

    protected override Grammar Fitting => Readings;

    protected override Grammar Unlike => Colours;

    protected override string Meaning => """{"kind": "pulse", "value": 72}""";

    protected override IRecognizer Start() => NeuralRecognizer.Open(NeuralFiles.Folder, NeuralFiles.Cache);

    protected override float[] Clip() => Spoken.ByFlite("pulse seventy two");
}
