using HandsFree.Speech.Sphinx;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Sphinx;

public sealed class SphinxParametersTests
{
    [Fact]
    public void The_measured_values_say_which_run_made_them()
    {
        SphinxParameters.Measured.Note.Length.ShouldBeGreaterThan(40);
        SphinxParameters.Measured.Version.ShouldBeGreaterThanOrEqualTo(1);
    }

    [Fact]
    public void At_the_threshold_speech_is_as_likely_as_not_a_sentence() =>
        SphinxParameters.Measured.Belonging(SphinxParameters.Measured.Threshold).ShouldBe(0.5, 1e-12);

    [Fact]
    public void The_more_the_phone_loop_leads_the_less_likely_it_is_a_sentence()
    {
        double[] likelihoods = [.. Enumerable.Range(-20, 60).Select(lead => SphinxParameters.Measured.Belonging(lead))];
        likelihoods.ShouldBe(likelihoods.OrderDescending());
        likelihoods[0].ShouldBeGreaterThan(0.9);
        likelihoods[^1].ShouldBeLessThan(0.1);
    }
}
