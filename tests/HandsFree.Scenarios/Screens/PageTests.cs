using HandsFree.App.Screens;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Screens;

/// <summary>The pages as text, 80 by 24.</summary>
public sealed class PageTests
{
    private static readonly RoundView Listening = new() { Mark = "(*)", Microphone = "LISTENING", Place = "Room 12 bed B", Awaited = "yes or no" };

    [Fact]
    public void A_read_back() => Match(RoundPage.Round(
        Listening with { What = "blood pressure, mmHg", Digits = "118/76", Clock = "rest 4:10", Next = "oxygen saturation" }, ""));

    [Fact]
    public void A_count() => Match(RoundPage.Round(Listening with { Awaited = "count", Clock = "count 0:23", Next = "pulse" }, ""));

    [Fact]
    public void After_five_seconds() => Match(RoundPage.Round(Listening, "yes"));

    [Fact]
    public void A_lost_microphone_and_a_text_that_nobody_can_hear() => Match(RoundPage.Round(
        Listening with
        {
            Mark = "(!)",
            Microphone = "MICROPHONE GONE: plug it in, or type",
            Text = "A guess can't be saved. Count, or measure again. You can say: count, thirty, sixty, uneven, or cancel.",
            Warning = "\"headset\" is gone; plug it in again",
        },
        "pulse 7"));

    [Fact]
    public void Locked() => Match(RoundPage.Round(
        new RoundView { IsLocked = true, Mark = "(*)", Microphone = "LISTENING", Awaited = "locked: type your PIN" }, "aide-7 240713"));

    [Fact]
    public void Help() => Match(RoundPage.Help(Listening, ""));

    [Fact]
    public void A_list_that_is_too_long() => Match(RoundPage.List(
        "Due in this round", [.. Enumerable.Range(1, 30).Select(i => $"Room {i,-9} pulse, oxygen saturation")], "Nothing is due.", Listening, ""));

    [Fact]
    public void An_empty_list() => Match(RoundPage.List("Open reports", [], "No report is open.", Listening, ""));

    [Theory]
    [InlineData("220/110", true)]
    [InlineData("98.6", true)]
    [InlineData("0123456789", false)]
    [InlineData("12a", false)]
    [InlineData("", false)]
    public void Digits_are_large_where_they_fit(string text, bool fits) => (BigDigits.Of(text, RoundPage.Columns) is not null).ShouldBe(fits);

    private static void Match(IReadOnlyList<string> page, [System.Runtime.CompilerServices.CallerMemberName] string name = "")
    {
        page.Count.ShouldBe(RoundPage.Rows);
        page.ShouldAllBe(line => line.Length <= RoundPage.Columns);
        Golden.Match(string.Join('\n', page.Select(line => line.TrimEnd())), member: name);
    }
}
