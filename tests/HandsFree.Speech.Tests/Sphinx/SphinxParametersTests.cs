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
}
