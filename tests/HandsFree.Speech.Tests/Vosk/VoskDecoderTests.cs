using HandsFree.Speech.Posterior;
using HandsFree.Speech.Tests.Contract;
using HandsFree.Speech.Vosk;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Vosk;

/// <summary>The binding against a real model: streaming, alternatives, disposal.</summary>
public sealed class VoskDecoderTests
{
    [Fact]
    public void Streaming_in_pieces_of_20_ms_hears_the_words_that_the_whole_clip_gives()
    {
        using VoskModel model = Load();
        short[] clip = Pcm.To16Bits(Spoken.ByEspeak("안녕하세요", "ko"));
        string phrases = VoskPhrases.Make(model, KoreanGrammars.Answers);

        using VoskDecoder whole = model.Start(phrases, 5);
        whole.Accept(clip);
        using VoskDecoder streamed = model.Start(phrases, 5);
        List<string> words = [];
        for (int at = 0; at < clip.Length; at += 320)
        {
            if (streamed.Accept(clip.AsSpan(at, Math.Min(320, clip.Length - at))))
            {
                words.Add(streamed.Result()[0].Words);
            }
        }

        words.Add(streamed.Finish()[0].Words);
        string.Join(' ', words).Trim().ShouldBe(whole.Finish()[0].Words);
        whole.Finish().ShouldAllBe(a => a.Words.Length == 0, "all was given out already");
    }

    [Fact]
    public void Alternatives_come_best_first_and_no_more_than_asked_for()
    {
        using VoskModel model = Load();
        using VoskDecoder decoder = model.Start(VoskPhrases.Make(model, KoreanGrammars.Answers), 3);
        decoder.Accept(Pcm.To16Bits(Spoken.ByEspeak("오늘 날씨", "ko")));
        IReadOnlyList<VoskAlternative> alternatives = decoder.Finish();
        alternatives.Count.ShouldBeInRange(1, 3);
        alternatives.Select(a => a.Score).ShouldBe(alternatives.Select(a => a.Score).OrderDescending());
    }

    [Fact]
    public void A_model_may_go_before_its_decoders()
    {
        VoskModel model = Load();
        VoskDecoder decoder = model.Start(VoskPhrases.Make(model, KoreanGrammars.Answers), 3);
        model.Dispose();
        decoder.Accept(new short[16_000]);
        decoder.Finish().ShouldAllBe(a => a.Words.Length == 0);
        decoder.Dispose();
        decoder.Dispose();
    }

    private static VoskModel Load()
    {
        VoskOptions options = KoreanModel.Options();
        VoskRecognizer.WhyNot(options).ShouldBeNull();
        return VoskModel.Load(options.ModelFolder).ShouldNotBeNull();
    }
}
