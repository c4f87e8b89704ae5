using HandsFree.Core.Observations;
using HandsFree.Core.Rules.Figures;
using HandsFree.Core.Rules.Scores;

namespace HandsFree.Core.Rules.Evaluation;

/// <summary>An instruction as it is spoken for one resident: <c>{cuff}</c> becomes the cuff of her arm, <c>{other arm}</c> the arm
/// that may be used. What is not known is left out.</summary>
internal static class RecheckWords
{
    public static string Said(RecheckInstruction instruction, Situation s) => instruction.Say
        .Replace("{cuff}", Cuff(s), StringComparison.Ordinal)
        .Replace("{other arm}", OtherArm(s), StringComparison.Ordinal);

    private static string Cuff(Situation s) =>
        s.Context.Resident.ArmCentimetres is { } arm && Scores.Cuff.For(arm) is { } cuff ? $", {cuff.Name}" : "";

    private static string OtherArm(Situation s)
    {
        var barred = s.Context.Resident.ArmsNotToBeUsed;
        return (barred.ContainsKey(Arm.Left), barred.ContainsKey(Arm.Right)) switch
        {
            (false, false) => s.How.Arm is null ? "" : $" on the {(s.How.Arm == Arm.Left ? "right" : "left")} arm",
            (true, false) => " on the right arm",
            (false, true) => " on the left arm",
            _ => "",
        };
    }
}
