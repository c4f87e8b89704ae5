using HandsFree.Core.Quantities;
using HandsFree.Core.Rules.Scores;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Rules;

public class ScoreTests
{
    /// <summary>Worked examples B-01 to B-10 after ACC/AHA 2017, table 6 (BMC Cardiovasc Disord 2019, table 1).</summary>
    [Theory]
    [InlineData(119, 79, PressureCategory.Normal)]
    [InlineData(119, 80, PressureCategory.Stage1)]
    [InlineData(120, 79, PressureCategory.Elevated)]
    [InlineData(125, 79, PressureCategory.Elevated)]
    [InlineData(129, 79, PressureCategory.Elevated)]
    [InlineData(125, 80, PressureCategory.Stage1)]
    [InlineData(130, 79, PressureCategory.Stage1)]
    [InlineData(139, 89, PressureCategory.Stage1)]
    [InlineData(140, 70, PressureCategory.Stage2)]
    [InlineData(118, 90, PressureCategory.Stage2)]
    [InlineData(180, 120, PressureCategory.Stage2)]
    [InlineData(181, 100, PressureCategory.Crisis)]
    [InlineData(170, 121, PressureCategory.Crisis)]
    public void A_pressure_has_the_category_of_the_guideline(int systolic, int diastolic, PressureCategory category) =>
        PressureCategories.Of(BloodPressure.FromMillimetresOfMercury(systolic, diastolic)).ShouldBe(category);

    /// <summary>Worked examples M-07 to M-09: American Heart Association 2005, cuff table; the gaps take the larger cuff (proposal without source).</summary>
    [Theory]
    [InlineData("21.9", null)]
    [InlineData("22", "small adult")]
    [InlineData("26", "small adult")]
    [InlineData("26.5", "adult")]
    [InlineData("34", "adult")]
    [InlineData("34.5", "large adult")]
    [InlineData("35", "large adult")]
    [InlineData("44", "large adult")]
    [InlineData("44.5", "adult thigh")]
    [InlineData("52", "adult thigh")]
    [InlineData("53", null)]
    public void An_arm_gets_the_cuff_of_the_table(string centimetres, string? cuff) =>
        Cuff.For(decimal.Parse(centimetres, System.Globalization.CultureInfo.InvariantCulture))?.Name.ShouldBe(cuff);

    [Fact]
    public void An_arm_outside_the_table_has_no_cuff_and_the_nurse_decides()
    {
        Cuff.For(21.9m).ShouldBeNull();
        Cuff.For(52.1m).ShouldBeNull();
    }

    /// <summary>Worked example M-10, American Heart Association 2005: length at least 80 %, width at least 40 % of the circumference.</summary>
    [Fact]
    public void The_ideal_bladder_of_a_30_cm_arm_is_24_by_12() => Cuff.IdealBladder(30).ShouldBe((24.0m, 12.0m));
}
