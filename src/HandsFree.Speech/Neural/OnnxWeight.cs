namespace HandsFree.Speech.Neural;

/// <summary>A weight as it is stored: weight = scale·q + offset.</summary>
/// <param name="Values">q, int8, two dimensions.</param>
/// <param name="Scale">One float.</param>
/// <param name="Offset">One float.</param>
internal sealed record OnnxWeight(OnnxTensor Values, OnnxTensor Scale, OnnxTensor Offset)
{
    private const double Rounding = 0.01;

    /// <summary>The q that stands for 0.</summary>
    /// <exception cref="InvalidDataException">It is no whole number, or none of 8 bits.</exception>
    public sbyte Zero
    {
        get
        {
            double zero = -Offset.Single / Scale.Single;
            return Math.Abs(zero - Math.Round(zero)) <= Rounding && Math.Round(zero) is >= sbyte.MinValue and <= sbyte.MaxValue
                ? (sbyte)Math.Round(zero)
                : throw new InvalidDataException($"weight {Values.Name} of the model has the zero point {zero}, expected a whole number of 8 bits; get the model again");
        }
    }
}
