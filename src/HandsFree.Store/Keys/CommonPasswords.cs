using System.Collections.Frozen;

namespace HandsFree.Store.Keys;

/// <summary>The beginnings of passwords that are tried first: with digits and signs behind them they are tried too. From memory of the
/// lists that are published each year; it stands for no such list and holds a few dozen of millions.</summary>
internal static class CommonPasswords
{
    private static readonly FrozenSet<string> Words = FrozenSet.ToFrozenSet(
    [
        "password", "passwort", "passphrase", "qwerty", "qwertz", "qwertyuiop", "asdfgh", "asdfghjkl", "zxcvbn", "zxcvbnm", "abc", "abcd", "abcdef",
        "iloveyou", "letmein", "welcome", "monkey", "dragon", "football", "baseball", "sunshine", "princess", "master", "shadow", "superman",
        "trustno", "admin", "administrator", "login", "secret", "changeme", "default", "guest", "hello", "freedom", "whatever", "starwars", "summer",
        "winter", "spring", "autumn", "charlie", "michael", "jennifer", "jordan", "computer", "internet", "nurse", "nursing", "nursinghome",
        "supervisor", "handsfree", "hospital", "pass", "test", "user", "root",
    ]);

    private static readonly (char Written, char Meant)[] Swaps = [('0', 'o'), ('1', 'i'), ('3', 'e'), ('4', 'a'), ('5', 's'), ('7', 't'), ('@', 'a'), ('$', 's'), ('!', 'i')];

    /// <summary>Whether it is one of the words, once or several times, with digits and signs behind or before it, or written with digits
    /// for letters.</summary>
    public static bool Hold(string passphrase)
    {
        string small = passphrase.ToLowerInvariant();
        return Is(Letters(small)) || Is(Letters(string.Concat(small.Select(Meant))).TrimEnd('i', 'o'));
    }

    private static bool Is(string letters) =>
        letters.Length == 0 || Words.Contains(letters) || Words.Any(word => letters.Length % word.Length == 0 && letters.Replace(word, "", StringComparison.Ordinal).Length == 0);

    private static string Letters(string text) => string.Concat(text.Where(char.IsLetter));

    private static char Meant(char written) => Swaps.FirstOrDefault(swap => swap.Written == written) is { Meant: not '\0' and var meant } ? meant : written;
}
