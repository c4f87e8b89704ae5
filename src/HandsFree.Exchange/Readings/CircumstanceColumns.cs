using System.Globalization;
using HandsFree.Core.Observations;

namespace HandsFree.Exchange.Readings;

/// <summary>The columns for what is said more rarely about the way a reading was taken.</summary>
internal static class CircumstanceColumns
{
    private const string Yes = "yes";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<CircumstanceColumn> All { get; } =
    [
        Word("delivery", CellWords<OxygenDelivery>.All, how => how.Delivery, (how, value) => how with { Delivery = value }),
        Word("cuff", CellWords<CuffSize>.All, how => how.Cuff, (how, value) => how with { Cuff = value }),
        Word("device", CellWords<DeviceNote>.All, how => how.Device, (how, value) => how with { Device = value }),
        Word("medicine", CellWords<MedicineTiming>.All, how => how.Medicine, (how, value) => how with { Medicine = value }),
        Flag("observed", how => how.Observed, how => how with { Observed = true }),
        Flag("machine", how => how.Machine, how => how with { Machine = true }),
        Number("counted", how => how.Counted, (how, value) => how with { Counted = value }),
        Number("count (s)", how => how.CountedSeconds, (how, value) => how with { CountedSeconds = value }),
        Number("since food (min)", how => how.MinutesSinceFoodOrDrink, (how, value) => how with { MinutesSinceFoodOrDrink = value }),
        Number("rested (min)", how => how.MinutesRested, (how, value) => how with { MinutesRested = value }),
        Number("standing (min)", how => how.MinutesStanding, (how, value) => how with { MinutesStanding = value }),
        Flag("too early", how => how.TooEarly, how => how with { TooEarly = true }),
        Flag("guess first", how => how.SaidAsGuessFirst, how => how with { SaidAsGuessFirst = true }),
    ];

    private static CircumstanceColumn Word<T>(
        string name, IReadOnlyDictionary<string, T> words, Func<Circumstances, T?> get, Func<Circumstances, T, Circumstances> set)
        where T : struct, Enum => new(
            name,
            $"one of: {string.Join(", ", words.Keys)}",
            how => get(how) is { } value ? CellWords<T>.Of(value) : null,
            (how, text) => words.TryGetValue(text.ToLowerInvariant(), out T value) ? set(how, value) : null);

    private static CircumstanceColumn Flag(string name, Func<Circumstances, bool> get, Func<Circumstances, Circumstances> set) => new(
        name, $"\"{Yes}\", or leave it empty", how => get(how) ? Yes : null, (how, text) => text.Equals(Yes, StringComparison.OrdinalIgnoreCase) ? set(how) : null);

    private static CircumstanceColumn Number(string name, Func<Circumstances, int?> get, Func<Circumstances, int, Circumstances> set) => new(
        name,
        "a whole number",
        how => get(how)?.ToString(CultureInfo.InvariantCulture),
        (how, text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int value) ? set(how, value) : null);
}
