using HandsFree.Language.Grammars;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Contract;

/// <summary>What every recogniser must do, whatever its engine. A subclass brings the engine, two grammars and a clip.</summary>
public abstract class RecognizerContract
{
    private const int Second = 16_000;

    /// <summary>The engine, fresh; skips the test where it is not installed.</summary>
    protected abstract IRecognizer Start();

    /// <summary>A grammar that the clip is a sentence of.</summary>
    protected abstract Grammar Fitting { get; }

    /// <summary>A grammar that shares no word with it.</summary>
    protected abstract Grammar Unlike { get; }

    /// <summary>16 kHz mono, with quiet around it.</summary>
    protected abstract float[] Clip();

    /// <summary>What the clip means in <see cref="Fitting"/>, as JSON.</summary>
    protected abstract string Meaning { get; }

    [Fact]
    public void A_sentence_of_the_grammar_is_heard_as_what_it_means()
    {
        using IRecognizer engine = Start();
        Hearing hearing = engine.Hear(Clip(), Fitting);
        hearing.Outcome.ShouldBe(HearingOutcome.Heard, hearing.Transcript);
        hearing.Best!.Meaning.ToString().ShouldBe(Meaning);
    }

    [Fact]
    public void Empty_audio_is_nothing()
    {
        using IRecognizer engine = Start();
        engine.Hear([], Fitting).Outcome.ShouldBe(HearingOutcome.Nothing);
    }

    [Fact]
    public void Digital_silence_becomes_no_value()
    {
        using IRecognizer engine = Start();
        engine.Hear(new float[2 * Second], Fitting).Outcome.ShouldBeOneOf(HearingOutcome.Nothing, HearingOutcome.NoReading);
    }

    [Fact]
    public void The_hiss_of_a_quiet_room_becomes_no_value()
    {
        using IRecognizer engine = Start();
        var random = new Random(7);
        float[] hiss = [.. Enumerable.Range(0, 2 * Second).Select(_ => (float)(random.NextDouble() - 0.5) * 0.001f)];
        engine.Hear(hiss, Fitting).Outcome.ShouldBeOneOf(HearingOutcome.Nothing, HearingOutcome.NoReading);
    }

    [Fact]
    public void A_click_of_ten_samples_becomes_no_value_and_no_crash()
    {
        using IRecognizer engine = Start();
        engine.Hear([0, 0.5f, -0.5f, 1, -1, 0.5f, 0, 0, 0, 0], Fitting).Outcome
            .ShouldBeOneOf(HearingOutcome.Nothing, HearingOutcome.NoReading);
    }

    [Theory]
    [InlineData(1, 0, 0)]
    [InlineData(10, 0, 0)]
    [InlineData(160, 0, 0.001)]
    [InlineData(480, 0, 0.001)]
    [InlineData(480, 0.008, 0.001)]
    [InlineData(1600, 0.02, 0.003)]
    public void A_click_in_the_quiet_that_speech_has_around_it_becomes_no_value(int length, double decay, double hiss)
    {
        using IRecognizer engine = Start();
        var random = new Random(7);
        float[] sound = [.. Enumerable.Range(0, Second * 6 / 5).Select(_ => (float)((random.NextDouble() - 0.5) * hiss))];
        for (int i = 0; i < length; i++)
        {
            double size = decay > 0 ? Math.Exp(-i / (decay * Second)) : 1;
            sound[(sound.Length / 2) + i] += (float)(0.6 * size * (random.Next(2) == 0 ? 1 : -1));
        }

        engine.Hear(sound, Fitting).Outcome.ShouldBeOneOf(HearingOutcome.Nothing, HearingOutcome.NoReading);
    }

    [Fact]
    public void Samples_that_are_no_numbers_or_too_loud_do_no_harm()
    {
        using IRecognizer engine = Start();
        float[] broken = Clip();
        broken[100] = float.NaN;
        broken[101] = float.PositiveInfinity;
        broken[102] = -40;
        engine.Hear(broken, Fitting).Best!.Meaning.ToString().ShouldBe(Meaning);
    }

    [Fact]
    public void Probabilities_are_sorted_and_sum_to_at_most_one()
    {
        using IRecognizer engine = Start();
        double[] probabilities = [.. engine.Hear(Clip(), Fitting).Candidates.Select(c => c.Probability)];
        probabilities.ShouldNotBeEmpty();
        probabilities.ShouldBe(probabilities.OrderByDescending(p => p));
        probabilities.ShouldAllBe(p => p > 0 && p <= 1);
        probabilities.Sum().ShouldBeLessThanOrEqualTo(1 + 1e-9);
    }

    [Fact]
    public void No_value_stands_in_the_list_twice()
    {
        using IRecognizer engine = Start();
        IReadOnlyList<Candidate> candidates = engine.Hear(Clip(), Fitting).Candidates;
        candidates.Select(c => c.Meaning).Distinct().Count().ShouldBe(candidates.Count);
    }

    [Fact]
    public void The_words_of_every_candidate_mean_the_candidate()
    {
        using IRecognizer engine = Start();
        foreach (Candidate candidate in engine.Hear(Clip(), Fitting).Candidates)
        {
            HandsFree.Language.Sentences.Matcher.Match(Fitting, candidate.Words).ShouldContain(candidate.Meaning);
        }
    }

    [Fact]
    public void The_same_clip_twice_is_the_same_hearing()
    {
        using IRecognizer engine = Start();
        float[] clip = Clip();
        Hearing first = engine.Hear(clip, Fitting);
        Hearing second = engine.Hear(clip, Fitting);
        second.Outcome.ShouldBe(first.Outcome);
        second.Candidates.ShouldBe(first.Candidates);
    }

    [Fact]
    public void Other_speech_between_changes_nothing()
    {
        using IRecognizer engine = Start();
        float[] clip = Clip();
        Hearing first = engine.Hear(clip, Fitting);
        engine.Hear([.. clip.Reverse()], Fitting);
        engine.Hear(clip, Fitting).Candidates.ShouldBe(first.Candidates);
    }

    [Fact]
    public void Preparing_twice_changes_nothing()
    {
        using IRecognizer engine = Start();
        engine.Prepare(Fitting);
        engine.Prepare(Fitting);
        engine.Hear(Clip(), Fitting).Best!.Meaning.ToString().ShouldBe(Meaning);
    }

    [Fact]
    public void Under_a_grammar_without_its_words_the_clip_never_becomes_what_it_meant()
    {
        using IRecognizer engine = Start();
        engine.Hear(Clip(), Unlike).Candidates.ShouldAllBe(c => c.Meaning.ToString() != Meaning);
    }

    [Fact]
    public void The_grammar_may_change_from_call_to_call()
    {
        using IRecognizer engine = Start();
        float[] clip = Clip();
        engine.Hear(clip, Unlike);
        engine.Hear(clip, Fitting).Best!.Meaning.ToString().ShouldBe(Meaning);
    }

    [Fact]
    public void After_disposal_every_call_says_so()
    {
        IRecognizer engine = Start();
        float[] clip = Clip();
        engine.Dispose();
        engine.Dispose();
        Should.Throw<ObjectDisposedException>(() => engine.Prepare(Fitting));
        Should.Throw<ObjectDisposedException>(() => engine.Hear(clip, Fitting));
    }
}
