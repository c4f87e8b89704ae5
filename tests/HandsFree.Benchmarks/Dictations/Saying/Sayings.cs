using System.Collections.Immutable;
using HandsFree.App.Hear;
using HandsFree.Core.Residents;
using HandsFree.Language.Grammars;
using HandsFree.Language.Meaning;
using HandsFree.Language.Sentences;

namespace HandsFree.Benchmarks.Dictations.Saying;

/// <summary>Ways of saying things, drawn from the product's own grammars. Each voice has its habits: which way it chooses hangs on the
/// voice, on what is said and on how often it has been said, so that the sound repeats from session to session.</summary>
internal sealed class Sayings(GrammarShelf shelf)
{
    private static readonly Dictionary<string, string> Rules = new() { ["blood pressure"] = "pressure" };

    // What was not understood is said another way; after so many the first one comes again.
    private const int MostWays = 4;

    // Ways that stand side by side in a grammar differ little.
    private const int Stride = 7919;

    private readonly Dictionary<string, IReadOnlyList<string>> known = [];

    /// <summary>A whole reading.</summary>
    /// <param name="value">The reading.</param>
    /// <param name="voice">Who says it.</param>
    /// <param name="time">0 for the first time; what was not understood is said another way.</param>
    public string Reading(Measured value, string voice, int time) => One(shelf.Of("readings"), ReadingRecord(value), voice, time);

    /// <summary>A count that was made without the program's tones: "pulse forty four in thirty seconds".</summary>
    public string Counted(string sign, int counted, int seconds, string voice) => One(
        shelf.Of("readings"),
        Record(("kind", Text(sign)), ("counted", Number(counted)), ("seconds", Number(seconds))),
        voice,
        0);

    /// <summary>The number alone, in any way.</summary>
    public string Value(Measured value, string voice, int time) =>
        One(shelf.Of("value", Rule(value.Sign)), Record(("value", NumberOf(value))), voice, time);

    /// <summary>The number alone, digit by digit.</summary>
    public static string Digits(Measured value) => DigitNames.Of(value);

    /// <summary>The right number in one breath with the no.</summary>
    public string Correction(Measured value, string voice, int time) =>
        One(shelf.Of("confirmation", Rule(value.Sign)), Record(("corrected", NumberOf(value))), voice, time);

    /// <summary>The number that was counted.</summary>
    public string Count(int counted, string voice, int time) => One(shelf.Of("count"), Record(("count", Number(counted))), voice, time);

    /// <summary>Yes or no.</summary>
    public string Answer(bool yes, string voice, int time) =>
        One(shelf.Of("confirmation", "yes_no"), Record(("confirm", new SemanticTruth(yes))), voice, time);

    /// <summary>Room and bed.</summary>
    public string Place(Resident resident, string voice, int time) => One(
        shelf.Of("identity"),
        Record(("room", Number(resident.Room)), ("bed", resident.Bed is { } bed ? Text(bed) : SemanticNothing.Only)),
        voice,
        time);

    /// <summary>The birthday, without the year.</summary>
    public string Birthday(Resident resident, string voice, int time) =>
        One(shelf.Of("identity"), Record(("born", Text(FormattableString.Invariant($"{resident.Born:MM-dd}")))), voice, time);

    /// <summary>One of a few guesses of a voice.</summary>
    public string Guess(string voice, int which) =>
        Sampler.Draw(shelf.Of("phrases", "hedge"), new Random(Steady.Number("guess", voice, which)));

    /// <summary>That a reading was refused.</summary>
    public string Refused(string sign, string voice) =>
        One(shelf.Of("readings"), Record(("kind", Text(sign)), ("not taken", Text("refused"))), voice, 0);

    private static string Rule(string sign) => Rules.GetValueOrDefault(sign, sign);

    private static SemanticRecord ReadingRecord(Measured value)
    {
        SemanticRecord record = Record(("kind", Text(value.Sign)), ("value", NumberOf(value)));
        record = value.Unit is "Celsius" && value.First > 60 ? throw new ArgumentException($"{value} is no temperature") : record;
        ImmutableArray<SemanticValue> ways = [.. value.Ways.Split(", ", StringSplitOptions.RemoveEmptyEntries).Select(w => (SemanticValue)Text(Way(w)))];
        return ways.IsEmpty ? record : record.With("qualifiers", new SemanticList(ways));
    }

    // The grammars' words for what a read-back says.
    private static string Way(string way) => way switch
    {
        "mouth" => "by mouth",
        "uneven" => "irregular",
        _ => way,
    };

    private static SemanticValue NumberOf(Measured value) =>
        value.Second is { } low ? new SemanticList([Number(value.First), Number(low)]) : Number(value.First);

    private static SemanticNumber Number(decimal number) => new(number);

    private static SemanticText Text(string text) => new(text);

    private static SemanticRecord Record(params (string Name, SemanticValue Value)[] fields) =>
        fields.Aggregate(SemanticRecord.Empty, (record, field) => record.With(field.Name, field.Value));

    private string One(Grammar grammar, SemanticRecord meaning, string voice, int time)
    {
        string key = $"{grammar.Name} {meaning}";
        if (!known.TryGetValue(key, out IReadOnlyList<string>? ways))
        {
            ways = [.. Sampler.For(grammar, meaning).Select(s => s.Words).Distinct()];
            known.Add(key, ways);
        }

        return ways.Count > 0
            ? ways[(Steady.Number(key, voice) + (Stride * (time % MostWays))) % ways.Count]
            : throw new InvalidOperationException($"the grammar {grammar.Name} has no sentence for {meaning}");
    }
}
