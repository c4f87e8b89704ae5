namespace HandsFree.Core.Rules.Scores;

/// <summary>Cuff by mid-arm circumference: American Heart Association, 2005, as printed by Wayne State University, vital signs 6.6.</summary>
/// <param name="Name">The cuff's name.</param>
/// <param name="BladderWidthCentimetres">Width of its bladder.</param>
/// <param name="BladderLengthCentimetres">Length of its bladder.</param>
public sealed record Cuff(string Name, int BladderWidthCentimetres, int BladderLengthCentimetres)
{
    private const decimal Least = 22;

    private static readonly (decimal UpTo, Cuff Cuff)[] Table =
    [
        (26, new("small adult", 12, 22)),
        (34, new("adult", 16, 30)),
        (44, new("large adult", 16, 36)),
        (52, new("adult thigh", 16, 42)),
    ];

    /// <summary>The cuff for an arm, or null below 22 or above 52 cm: the nurse decides. In the gaps of the table (26 to 27, 34 to
    /// 35, 44 to 45) the larger cuff (proposal without source: too small a cuff errs more).</summary>
    /// <param name="centimetres">Circumference at the middle of the upper arm.</param>
    public static Cuff? For(decimal centimetres) =>
        centimetres < Least ? null : Array.Find(Table, row => centimetres <= row.UpTo).Cuff;

    /// <summary>The ideal bladder for an arm: at least 80 % of the circumference long, at least 40 % wide.</summary>
    /// <returns>Length and width in centimetres.</returns>
    public static (decimal Length, decimal Width) IdealBladder(decimal centimetres) => (centimetres * 0.8m, centimetres * 0.4m);
}
