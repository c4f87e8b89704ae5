using HandsFree.Language.Grammars;
using HandsFree.Speech.Tests.Vosk;
using HandsFree.Speech.Vosk;

namespace HandsFree.Speech.Tests.Contract;

/// <summary>With the small Korean model: the English one is the user's download.</summary>
public sealed class VoskContract : RecognizerContract
{
    protected override Grammar Fitting => KoreanGrammars.Answers;

    protected override Grammar Unlike => KoreanGrammars.Colours;

    protected override string Meaning => "\"thanks\"";

    protected override IRecognizer Start() => new VoskRecognizer(KoreanModel.Options());

    protected override float[] Clip() => Spoken.ByEspeak("감사합니다", "ko");
}
