using System.Diagnostics.CodeAnalysis;

namespace HandsFree.Store.Keys;

/// <summary>A person's PIN: 6 to 12 digits that are neither all the same nor a run such as 123456.</summary>
public sealed class Pin
{
    /// <summary>The fewest digits.</summary>
    public const int FewestDigits = 6;

    /// <summary>The most digits.</summary>
    public const int MostDigits = 12;

    private Pin(string digits) => Digits = digits;

    internal string Digits { get; }

    /// <summary>The PIN, or one line that says what is wrong with it. The line never repeats it.</summary>
    public static bool TryParse(string text, [NotNullWhen(true)] out Pin? pin, [NotNullWhen(false)] out string? error)
    {
        ArgumentNullException.ThrowIfNull(text);
        pin = null;
        error = text.Length is < FewestDigits or > MostDigits || !text.All(char.IsAsciiDigit)
            ? $"a PIN has {FewestDigits} to {MostDigits} digits and nothing else"
            : IsRun(text) ? "a PIN is not one digit repeated and not a run such as 123456; choose another" : null;
        if (error is not null)
        {
            return false;
        }

        pin = new Pin(text);
        return true;
    }

    /// <summary>Nothing of the PIN.</summary>
    public override string ToString() => "PIN";

    private static bool IsRun(string digits)
    {
        int step = digits[1] - digits[0];
        return step is >= -1 and <= 1 && digits.Zip(digits.Skip(1), (a, b) => b - a).All(each => each == step);
    }
}
