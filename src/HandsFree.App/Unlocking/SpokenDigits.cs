using System.Security.Cryptography;
using HandsFree.Core.Journal;

namespace HandsFree.App.Unlocking;

/// <summary>Four to eight digits of her choice that unlock her session when she says them; not her PIN. Who can read the journal could try
/// all of them: they unlock no journal, only a session that is open already.</summary>
internal static class SpokenDigits
{
    private const int Fewest = 4;
    private const int Most = 8;
    private const int Rounds = 600_000;

    /// <summary>Null, or one line that says what is wrong with them. The line never repeats them.</summary>
    public static string? Fault(string digits) => digits.Length is < Fewest or > Most || !digits.All(char.IsAsciiDigit)
        ? $"the digits are {Fewest} to {Most}, and nothing else"
        : digits.Distinct().Count() == 1 ? "one digit repeated is heard by chance; choose others" : null;

    /// <summary>The event's salt and hash.</summary>
    public static (string Salt, string Hash) Kept(string digits)
    {
        byte[] salt = RandomNumberGenerator.GetBytes(16);
        return (Convert.ToBase64String(salt), Convert.ToBase64String(Hash(digits, salt)));
    }

    /// <summary>Whether these digits were set.</summary>
    public static bool Match(SpokenDigitsSet set, string digits) => CryptographicOperations.FixedTimeEquals(
        Hash(digits, Convert.FromBase64String(set.Salt)), Convert.FromBase64String(set.Hash));

    private static byte[] Hash(string digits, byte[] salt) => Rfc2898DeriveBytes.Pbkdf2(digits, salt, Rounds, HashAlgorithmName.SHA256, 32);
}
