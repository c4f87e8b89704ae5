using HandsFree.Core.Observations;
using HandsFree.Core.Rules;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Rules;

public class RecheckWordsTests
{
    [Theory]
    [InlineData("bp 88/60", "", "Check the cuff, wait one minute and measure again.")]
    [InlineData("bp 88/60 left", "", "Check the cuff, wait one minute and measure again on the right arm.")]
    [InlineData("bp 88/60 right", "", "Check the cuff, wait one minute and measure again on the left arm.")]
    [InlineData("bp 88/60 right", "not left fistula", "Check the cuff, wait one minute and measure again on the right arm.")]
    [InlineData("bp 88/60", "not left fistula", "Check the cuff, wait one minute and measure again on the right arm.")]
    public void The_other_arm_is_named_unless_it_must_not_be_used(string reading, string resident, string instruction) =>
        Instruction(Notation.Context(resident), reading).ShouldBe(instruction);

    [Fact]
    public void Where_neither_arm_may_be_used_none_is_named()
    {
        var context = Notation.Context("not left fistula");
        var both = context.Resident with { ArmsNotToBeUsed = new Dictionary<Arm, string> { [Arm.Left] = "fistula", [Arm.Right] = "cast" } };

        Instruction(context with { Resident = both }, "bp 88/60").ShouldEndWith("measure again.");
    }

    /// <summary>American Heart Association, 2005, cuff table: 35 to 44 cm large adult.</summary>
    [Fact]
    public void The_cuff_of_a_measured_arm_is_named()
    {
        var context = Notation.Context();

        Instruction(context with { Resident = context.Resident with { ArmCentimetres = 36 } }, "bp 215/90")
            .ShouldBe("Let the resident rest five minutes, back and arm supported. Check the cuff, large adult, then measure again.");
    }

    private static string Instruction(DecisionContext context, string reading) =>
        TestRules.Defaults.Decide(Notation.Reading(reading), context).Recheck.ShouldNotBeNull().Instruction;
}
