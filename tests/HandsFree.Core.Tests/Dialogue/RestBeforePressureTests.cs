using HandsFree.Core.Journal;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>How long the resident had rested goes with a pressure into the record. Sources: safety.md 1; five minutes: clinical-rules 5.1
/// (AHA 2005).</summary>
public sealed class RestBeforePressureTests
{
    private const string Pressure = "blood pressure one two zero over eight zero";

    [Fact]
    public void A_pressure_before_the_rest_is_over_says_how_long_it_was()
    {
        Talk talk = Talk.WithMary().Go("(after 3 min)", Pressure);
        talk.Said.ShouldBe("Blood pressure, one two zero over eight zero.");
        Rested(talk).ShouldBe(3);
    }

    [Fact]
    public void After_the_rest_nothing_is_said_of_it() => Rested(Talk.WithMary().Go("(after 5 min)", Pressure)).ShouldBeNull();

    [Fact]
    public void Was_resting_clears_it() => Rested(Talk.WithMary().Go("she was resting", Pressure)).ShouldBeNull();

    [Fact]
    public void A_correction_keeps_the_moment_of_the_measurement() =>
        Rested(Talk.WithMary().Go("(after 3 min)", Pressure, "(after 3 min)", "no one two four over eight zero")).ShouldBe(3);

    [Fact]
    public void After_a_stop_it_is_unknown() =>
        Rested(Talk.WithMary().Go("stop", "continue", "yes", "march third", Pressure, "yes")).ShouldBeNull();

    [Fact]
    public void Other_readings_have_none() => Rested(Talk.WithMary().Go("pulse seventy two")).ShouldBeNull();

    private static int? Rested(Talk talk) =>
        talk.Go("yes").Journal.OfType<ReadingRecorded>().ShouldHaveSingleItem().Confirmed.Reading.How.MinutesRested;
}
