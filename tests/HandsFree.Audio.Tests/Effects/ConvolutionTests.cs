using HandsFree.Audio.Effects;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Effects;

public sealed class ConvolutionTests
{
    // Convolving is multiplying polynomials: 12345 × 678 = 8369910, digit sums before the carries.
    [Fact]
    public void It_multiplies_polynomials() =>
        Convolution.Of([5, 4, 3, 2, 1], [8, 7, 6]).ShouldBe([40, 67, 82, 61, 40, 19, 6]);

    [Fact]
    public void Its_order_does_not_matter_whatever_the_lengths()
    {
        float[] a = [.. Enumerable.Range(1, 37).Select(i => (float)(i % 7))];
        float[] b = [.. Enumerable.Range(1, 19).Select(i => (float)(i % 5))];

        Convolution.Of(a, b).ShouldBe(Convolution.Of(b, a));
    }

    [Fact]
    public void With_nothing_it_is_nothing() => Convolution.Of([1], []).ShouldBeEmpty();
}
