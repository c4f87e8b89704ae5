using HandsFree.App.Session;
using HandsFree.Benchmarks.Live;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Benchmarks.Tests.Live;

/// <summary>The long shift in its short form.</summary>
public sealed class LongShiftTests
{
    [Fact]
    public void Half_an_hour_with_ten_device_losses_goes_on_to_its_end()
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("handsfree-long-");
        try
        {
            LongShiftResult result = new LongShift
            {
                Length = TimeSpan.FromMinutes(30),
                Losses = 10,
                Demo = Path.Combine(Shared.Repository, "demo-audio-synthetic"),
                Write = _ => { },
            }.Run(folder.FullName);

            result.End.ShouldBe(SessionEnd.Goodbye);
            result.Losses.ShouldBeInRange(9, 11);
            result.Readings.ShouldBeGreaterThan(20);
            result.Late.ShouldBe(0);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
