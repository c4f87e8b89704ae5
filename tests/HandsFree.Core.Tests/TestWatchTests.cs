using HandsFree.TestKit;
using Microsoft.Extensions.Time.Testing;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests;

/// <summary>The time limit of every test.</summary>
public sealed class TestWatchTests
{
    [Fact]
    public void A_test_that_hangs_is_named_and_one_that_ended_is_not()
    {
        FakeTimeProvider time = new();
        List<string> hung = [];
        using TestWatch watch = new(TimeSpan.FromMinutes(2), time, hung.Add);
        watch.Began("1", "Hangs");
        watch.Began("2", "Ends");
        time.Advance(TimeSpan.FromMinutes(1));
        watch.Ended("2");
        hung.ShouldBeEmpty();

        time.Advance(TimeSpan.FromSeconds(70));

        hung[0].ShouldBe("longer than 2 minutes: Hangs");
    }

    [Fact]
    public void Every_test_assembly_has_the_limit() =>
        typeof(TestWatchTests).Assembly.GetCustomAttributes(typeof(TimeLimitAttribute), inherit: false).ShouldHaveSingleItem();
}
