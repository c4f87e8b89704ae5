using System.Globalization;
using System.Security.Cryptography;

namespace HandsFree.App.Journals;

/// <summary>Beginnings of event ids that no other session and no other command has, on this device or another: the moment, for whoever
/// reads them, and 48 bits of chance. The moment alone would not do: two rounds can begin in one second, a clock shows an hour twice in
/// autumn, and is set back.</summary>
internal static class EventIds
{
    private const int Digits = 12;

    /// <summary>"round-20260302-140311-9f2c04d1a7be": the moment in UTC.</summary>
    /// <param name="what">What it is: "round", "desk".</param>
    /// <param name="now">The moment.</param>
    public static string Begin(string what, DateTimeOffset now) => string.Create(
        CultureInfo.InvariantCulture, $"{what}-{now.ToUniversalTime():yyyyMMdd-HHmmss}-{RandomNumberGenerator.GetHexString(Digits, lowercase: true)}");
}
