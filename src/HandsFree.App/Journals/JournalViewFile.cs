using System.Buffers.Binary;
using HandsFree.App.Homes;
using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;

namespace HandsFree.App.Journals;

/// <summary>The view of a journal that the present needs, kept in a sealed file beside it: loaded, brought up to date from the events that
/// came since, and kept again when many came. Where no file fits, it is made anew from the whole journal.</summary>
internal sealed class JournalViewFile(Journal journal, string path)
{
    private const int WorthKeeping = 200;

    /// <summary>The events, oldest first.</summary>
    /// <exception cref="JournalReadException">The journal can't be read.</exception>
    /// <exception cref="InvalidDataException">An event can't be read; says which.</exception>
    public IReadOnlyList<JournalEvent> Present()
    {
        PresentEvents present = new();
        long had = Load(present);
        long last = had;
        foreach (JournalEntry entry in journal.ReadFrom(had + 1))
        {
            present.Add(HomeJournal.Decoded(entry));
            last = entry.Sequence;
        }

        if (last - had >= WorthKeeping)
        {
            present.Trim();
            Save(present, last);
        }

        return present.Events;
    }

    private long Load(PresentEvents present)
    {
        if (journal.LoadView(path) is not var (sequence, content))
        {
            return 0;
        }

        for (ReadOnlySpan<byte> rest = content; rest.Length > 0;)
        {
            int length = BinaryPrimitives.ReadInt32BigEndian(rest);
            present.Add(JournalEventCodec.Decode(rest.Slice(sizeof(int), length)));
            rest = rest[(sizeof(int) + length)..];
        }

        return sequence;
    }

    private void Save(PresentEvents present, long last)
    {
        using MemoryStream content = new();
        Span<byte> length = stackalloc byte[sizeof(int)];
        foreach (JournalEvent happened in present.Events)
        {
            byte[] body = JournalEventCodec.Encode(happened);
            BinaryPrimitives.WriteInt32BigEndian(length, body.Length);
            content.Write(length);
            content.Write(body);
        }

        journal.SaveView(path, last, content.ToArray());
    }
}
