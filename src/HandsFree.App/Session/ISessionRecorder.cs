using HandsFree.Core.Journal;

namespace HandsFree.App.Session;

/// <summary>Keeps the sound of what is saved.</summary>
internal interface ISessionRecorder
{
    /// <summary>Something was understood; it is only remembered until it is saved or forgotten.</summary>
    /// <param name="at">When the speech began.</param>
    /// <param name="samples">16 kHz.</param>
    void Heard(DateTimeOffset at, ReadOnlyMemory<float> samples);

    /// <summary>These events are in the journal: what was heard for them is kept.</summary>
    /// <returns>Null, or one line that says why something was not kept.</returns>
    string? Saved(IReadOnlyList<JournalEvent> events);
}
