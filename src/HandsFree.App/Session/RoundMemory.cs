using System.Globalization;
using System.Text;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Dialogue.Recovery;
using HandsFree.Core.Handover;
using HandsFree.Core.Journal;
using HandsFree.Store.Keys;

namespace HandsFree.App.Session;

/// <summary>Seals what a round is told under the key of its shift, and opens it again while that key is there.</summary>
/// <param name="keys">The keys of the shifts.</param>
/// <param name="shifts">When shifts begin.</param>
/// <param name="readable">How long after its shift it can be read.</param>
internal sealed class RoundMemory(ShiftKeys keys, ShiftClock shifts, TimeSpan readable)
{
    /// <summary>The event of something that was told.</summary>
    /// <param name="number">Its number among what the round was told.</param>
    /// <param name="round">The round's session.</param>
    /// <param name="aide">Whose round.</param>
    /// <param name="told">What.</param>
    /// <param name="now">Decides about the shift.</param>
    public DialogueTold Seal(int number, string round, string aide, DialogueEvent told, DateTimeOffset now)
    {
        string id = string.Create(CultureInfo.InvariantCulture, $"{round}-told-{number}");
        DateTimeOffset shift = shifts.Began(now);
        string name = shift.UtcDateTime.ToString("yyyyMMdd-HHmm", CultureInfo.InvariantCulture);
        byte[] bytes = keys.Seal(name, End(shift) + readable, Encoding.UTF8.GetBytes(id), DialogueEventCodec.Encode(told));
        return new DialogueTold(id, aide, told.At, round, name, bytes);
    }

    /// <summary>What was told; null where its time is over.</summary>
    /// <exception cref="InvalidDataException">It is of another form than this program's.</exception>
    public DialogueEvent? Open(DialogueTold told) =>
        keys.Open(told.Key, Encoding.UTF8.GetBytes(told.Id), told.Sealed) is { } bytes ? DialogueEventCodec.Decode(bytes) : null;

    // The next beginning; in a home of one shift a day later.
    private DateTimeOffset End(DateTimeOffset shift)
    {
        DateTimeOffset hour = shift.AddHours(1);
        while (shifts.Began(hour) <= shift && hour < shift.AddHours(25))
        {
            hour = hour.AddHours(1);
        }

        return hour;
    }
}
