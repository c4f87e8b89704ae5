using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using HandsFree.Core.People;

namespace HandsFree.Store.Keys;

/// <summary>What a person types to be let in: a PIN of 6 to 12 digits, or a passphrase of 8 to 64 signs. Nurses and supervisors need a
/// passphrase: what they sign counts more, and a PIN is found by trying where somebody has the disk.</summary>
public sealed class Pin
{
    /// <summary>The fewest digits of a PIN.</summary>
    public const int FewestDigits = 6;

    /// <summary>The most digits of a PIN.</summary>
    public const int MostDigits = 12;

    /// <summary>The fewest signs of a passphrase.</summary>
    public const int FewestSigns = 8;

    /// <summary>The most signs of a passphrase.</summary>
    public const int MostSigns = 64;

    private const int FewestDifferent = 5;

    private readonly string text;
    private readonly Lock gate = new();
    private (byte[] Salt, byte[] Key)? stretched;

    private Pin(string text) => this.text = text;

    /// <summary>Whether it is digits alone.</summary>
    public bool IsDigits => text.All(char.IsAsciiDigit);

    /// <summary>What was typed, or one line that says what is wrong with it. The line never repeats it.</summary>
    public static bool TryParse(string text, [NotNullWhen(true)] out Pin? pin, [NotNullWhen(false)] out string? error)
    {
        ArgumentNullException.ThrowIfNull(text);
        pin = null;
        string whole = text.IsNormalized() ? text : text.Normalize(NormalizationForm.FormC);
        error = whole.Length > 0 && whole.All(char.IsAsciiDigit) ? WrongPin(whole) : WrongPassphrase(whole);
        if (error is not null)
        {
            return false;
        }

        pin = new Pin(whole);
        return true;
    }

    /// <summary>Why it is not enough for a new person of that role, as one line that does not repeat it; null where it is.</summary>
    /// <param name="person">Her id, which must not be in it.</param>
    /// <param name="role">What she may do.</param>
    public string? WhyTooWeak(string person, Role role)
    {
        ArgumentNullException.ThrowIfNull(person);
        return role > Role.Aide && IsDigits
            ? string.Create(CultureInfo.InvariantCulture, $"a {role.ToString().ToLowerInvariant()} needs a passphrase of at least {FewestSigns} signs that is not digits alone; three words that nobody expects together are good")
            : !IsDigits && person.Length > 2 && text.Contains(person, StringComparison.OrdinalIgnoreCase)
            ? "a passphrase does not hold the person's id; choose another"
            : null;
    }

    /// <summary>Nothing of it.</summary>
    public override string ToString() => "PIN";

    /// <summary>PBKDF2-SHA-256 of it. Remembered for the last salt: one run of the program opens the same slot several times.</summary>
    internal byte[] Stretched(byte[] salt)
    {
        lock (gate)
        {
            if (stretched is not var (known, key) || !known.AsSpan().SequenceEqual(salt))
            {
                key = Rfc2898DeriveBytes.Pbkdf2(text, salt, KeyWrap.Rounds, HashAlgorithmName.SHA256, 32);
                stretched = (salt, key);
            }

            return key;
        }
    }

    private static string? WrongPin(string digits) => digits.Length is < FewestDigits or > MostDigits
        ? $"a PIN has {FewestDigits} to {MostDigits} digits and nothing else"
        : IsRun(digits) || IsRepeated(digits) || IsDay(digits)
        ? "a PIN is not digits repeated (777777, 121212, 123123), not a run such as 123456 and not a year or date; choose another"
        : null;

    private static string? WrongPassphrase(string signs) => signs.Length is < FewestSigns or > MostSigns
        ? $"a PIN has {FewestDigits} to {MostDigits} digits and nothing else; a passphrase has {FewestSigns} to {MostSigns} signs"
        : signs.Any(char.IsControl) || signs.Trim().Length != signs.Length
        ? "a passphrase has no control signs and no blank at its beginning or end"
        : signs.Distinct().Count() < FewestDifferent || IsRepeated(signs) || CommonPasswords.Hold(signs)
        ? "this passphrase is one of those that are tried first; three words that nobody expects together are good"
        : null;

    // 777777, 123456, 987654.
    private static bool IsRun(string digits)
    {
        int step = digits[1] - digits[0];
        return step is >= -1 and <= 1 && digits.Zip(digits.Skip(1), (a, b) => b - a).All(each => each == step);
    }

    // 121212, 123123, 12341234: one piece again and again.
    private static bool IsRepeated(string signs) => Enumerable.Range(1, signs.Length / 2).Any(length =>
        signs.Length % length == 0 && Enumerable.Range(0, signs.Length).All(i => signs[i] == signs[i % length]));

    // 19900101, 20001231: a birthday is the first thing that is tried.
    private static bool IsDay(string digits) => digits.Length == 8 && (
        IsDay(digits[..4], digits[4..6], digits[6..]) || IsDay(digits[4..], digits[..2], digits[2..4]) || IsDay(digits[4..], digits[2..4], digits[..2]));

    private static bool IsDay(string year, string month, string day) =>
        int.Parse(year, CultureInfo.InvariantCulture) is >= 1900 and < 2100
        && int.Parse(month, CultureInfo.InvariantCulture) is >= 1 and <= 12
        && int.Parse(day, CultureInfo.InvariantCulture) is >= 1 and <= 31;
}
