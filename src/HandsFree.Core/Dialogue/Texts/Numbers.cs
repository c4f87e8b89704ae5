using HandsFree.Core.Meanings;

namespace HandsFree.Core.Dialogue;

/// <summary>A number as it was said, digit by digit.</summary>
internal static class Numbers
{
    public static string Of(SpokenNumber number) =>
        number.Second is { } second ? $"{DigitWords.Of(number.First)} over {DigitWords.Of(second)}" : DigitWords.Of(number.First);
}
