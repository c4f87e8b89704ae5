using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;

namespace HandsFree.Benchmarks.Micro;

/// <summary>Events of a made-up home of forty residents: of ten, nine are pulses and one was not taken.</summary>
internal static class ShiftEvents
{
    private const int Residents = 40;
    private const int NotTakenEach = 10;
    private static readonly DateTimeOffset Morning = new(2026, 11, 25, 7, 0, 0, TimeSpan.Zero);

    /// <summary>The home.</summary>
    public static Roster Roster { get; } = new([.. Enumerable.Range(0, Residents).Select(i => new Resident
    {
        Id = $"resident-{i}",
        Name = $"Person {i}",
        Room = 1 + (i / 2),
        Bed = i % 2 == 0 ? "a" : "b",
        Born = new(1940, 1, 1 + (i % 28)),
    })]);

    /// <summary>That many events, one a minute.</summary>
    public static IReadOnlyList<JournalEvent> Make(int count) => [.. Enumerable.Range(0, count).Select(Event)];

    /// <summary>The event with that number, from 0 on.</summary>
    public static JournalEvent Event(int number)
    {
        string resident = Roster.Residents[number % Residents].Id;
        DateTimeOffset at = Morning.AddMinutes(number);
        Heard heard = new("pulse seven two", 0.99, 6.5, "pulse seven three", -26, false, at);
        if (number % NotTakenEach == 0)
        {
            return new NotTakenRecorded($"s-{number}", "aide-1", at, resident, VitalSign.Pulse, NotTakenReason.Refused, heard, "refused");
        }

        Understood understood = new(heard, new Reading(HeartRate.FromPerMinute(60 + (number % 30)), Circumstances.Unsaid));
        Confirmed confirmed = ReadBack.Of(understood, "pulse, seven two", at).ByYes(heard with { Words = "yes" }, new Attribution("aide-1", at, at));
        return new ReadingRecorded($"s-{number}", "aide-1", at, resident, confirmed, new Decision(Outcome.Accept, null, [], false, "hash"), false, null);
    }
}
