using HandsFree.Audio.Effects;
using HandsFree.Audio.Tests.Signals;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Effects;

/// <summary>Against the promise of Kaiser's design (Kaiser 1974; Oppenheim and Schafer, Discrete-Time Signal Processing, section 7.5.3).</summary>
public sealed class NarrowBandTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(300)]
    [InlineData(1_000)]
    [InlineData(2_500)]
    [InlineData(3_400)]
    public void The_passband_is_flat_to_a_thousandth(double hertz) => Magnitude(hertz).ShouldBe(1, 0.0011);

    [Theory]
    [InlineData(4_000)]
    [InlineData(4_300)]
    [InlineData(5_500)]
    [InlineData(8_000)]
    public void From_4_kHz_on_it_attenuates_by_60_dB(double hertz) => (20 * Math.Log10(Magnitude(hertz))).ShouldBeLessThan(-59.5);

    // An ideal low-pass cut by Kaiser's window passes half of the amplitude in the middle of its transition.
    [Fact]
    public void In_the_middle_of_the_transition_it_lets_half_through() => Magnitude(3_700).ShouldBe(0.5, 0.002);

    [Fact]
    public void A_tone_passes_with_its_phase_and_length()
    {
        float[] tone = Signal.Sine(1_000, 16_000, 0.5);

        float[] passed = NarrowBand.Apply(tone);

        passed.Length.ShouldBe(tone.Length);
        var (amplitude, phase) = Signal.Component(passed, 1_600, 6_400, 1_000, 16_000);
        amplitude.ShouldBe(0.5, 0.001);
        phase.ShouldBe(0, 0.001);
    }

    [Fact]
    public void Nothing_stays_nothing() => NarrowBand.Apply([]).ShouldBeEmpty();

    /// <summary>Of the discrete-time Fourier transform of the impulse response.</summary>
    private static double Magnitude(double hertz)
    {
        double real = 0;
        double imaginary = 0;
        for (int i = 0; i < NarrowBand.Response.Length; i++)
        {
            real += NarrowBand.Response[i] * Math.Cos(2 * Math.PI * hertz * i / 16_000);
            imaginary += NarrowBand.Response[i] * Math.Sin(2 * Math.PI * hertz * i / 16_000);
        }

        return Math.Sqrt((real * real) + (imaginary * imaginary));
    }
}
