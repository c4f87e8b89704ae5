using System.Globalization;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Language.Meaning;

namespace HandsFree.Core.Meanings;

/// <summary>From what a grammar's tags built to what it means here.</summary>
public static class MeaningMap
{
    /// <summary>The meaning; null where the value is none of ours. A number that no such quantity can have is
    /// <see cref="Meaning.NotPossible"/>.</summary>
    /// <param name="value">What the tags built.</param>
    /// <param name="weightUnit">The home's unit for a weight that was said without one.</param>
    public static Meaning? From(SemanticValue value, WeightUnit weightUnit = WeightUnit.Pounds) =>
        value is SemanticRecord record ? FromRecord(record, weightUnit) : null;

    private static Meaning? FromRecord(SemanticRecord record, WeightUnit weightUnit) => record switch
    {
        _ when record["query"] is SemanticText text => QueryMap.From(text.Value, record),
        _ when record["told"] is SemanticText text => QueryMap.Told(text.Value),
        _ when record["not taken"] is SemanticText text => NotTaken(text.Value, record["kind"]),
        _ when record["hedge"] is SemanticTruth { Value: true } => new Meaning.Hedge(ReadingMap.Sign(record["kind"])),
        _ when record["kind"] is SemanticText kind => ReadingMap.From(kind.Value, record, weightUnit),
        _ when record["value"] is { } number => SpokenNumberMap.From(number) is { } n ? new Meaning.ValueAlone(n) : null,
        _ when record["confirm"] is SemanticTruth yes => new Meaning.Answer(yes.Value),
        _ when record["corrected"] is { } number => SpokenNumberMap.From(number) is { } n ? new Meaning.Correction(n) : null,
        _ when record["count"] is SemanticNumber count => Count(count.Value),
        _ when record["qualifier"] is SemanticText text => Qualifier(text.Value, record["litres"]),
        _ when record["word"] is SemanticText text => Words.Counting.TryGetValue(text.Value, out CountWord w) ? new Meaning.Counting(w) : null,
        _ when record["round"] is SemanticText text => Words.Round.TryGetValue(text.Value, out RoundWord r) ? new Meaning.AboutRound(r) : null,
        _ when record["worried"] is SemanticTruth { Value: true } => new Meaning.Worried(),
        _ when record["room"] is SemanticNumber room => WithBirthday(Place(room.Value, record["bed"]), record["who"]),
        _ when record["bed"] is SemanticText { Value: "a" or "b" or "c" or "d" } bed => new Meaning.BedAlone(bed.Value),
        _ when record["born"] is SemanticText date => Born(date.Value),
        _ when record["band"] is SemanticText band => Band(band.Value),
        _ when record["band"] is SemanticNumber band => Band(band.ToString()),
        _ when record["command"] is SemanticText text => Command(text.Value),
        _ => null,
    };

    private static Meaning Count(decimal count) =>
        count is >= 0 and <= HeartRate.Greatest && decimal.Truncate(count) == count
            ? new Meaning.CountSaid((int)count)
            : new Meaning.NotPossible(null, new SpokenNumber(count), $"a count is a whole number from 0 to {HeartRate.Greatest}");

    private static Meaning.Qualifier? Qualifier(string text, SemanticValue? litres) =>
        Qualifiers.From(text, (litres as SemanticNumber)?.Value) is { } how ? new Meaning.Qualifier(how) : null;

    private static Meaning.NotTaken? NotTaken(string text, SemanticValue? kind) =>
        Words.Reasons.TryGetValue(text, out NotTakenReason reason) ? new Meaning.NotTaken(reason, ReadingMap.Sign(kind)) : null;

    private static Meaning? Command(string text) =>
        Words.Commands.TryGetValue(text, out CommandWord word) ? new Meaning.Command(word) : NotTaken(text, null);

    private static Meaning? WithBirthday(Meaning? meaning, SemanticValue? who) => (meaning, who) switch
    {
        (Meaning.Place place, SemanticRecord born) when born["born"] is SemanticText date => Born(date.Value) is { } birthday ? place with { Born = birthday } : null,
        _ => meaning,
    };

    private static Meaning? Place(decimal room, SemanticValue? bed) => bed switch
    {
        _ when !IsRoom(room) => new Meaning.NotPossible(null, new SpokenNumber(room), "a room is a whole number from 1 to 999"),
        null or SemanticNothing => new Meaning.Place((int)room, null),
        SemanticText { Value: "a" or "b" or "c" or "d" } letter => new Meaning.Place((int)room, letter.Value),
        _ => null,
    };

    /// <summary>Whether a number can be a room's.</summary>
    public static bool IsRoom(decimal room) => room is >= 1 and <= 999 && decimal.Truncate(room) == room;

    private static Meaning.BirthDate? Born(string text)
    {
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date))
        {
            return new Meaning.BirthDate(date.Month, date.Day, date.Year);
        }

        // Day and month alone are tried in a leap year: February 29 is a birthday too.
        return DateOnly.TryParseExact("2000-" + text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day)
            ? new Meaning.BirthDate(day.Month, day.Day, null)
            : null;
    }

    private static Meaning.BandNumber? Band(string text) =>
        text.Length > 0 && text.All(char.IsAsciiDigit) ? new Meaning.BandNumber(text) : null;
}
