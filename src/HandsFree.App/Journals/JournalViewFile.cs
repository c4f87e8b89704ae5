using System.Buffers.Binary;
using HandsFree.App.Homes;
using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;

namespace HandsFree.App.Journals;

/// <summary>The view of a journal that the present needs, kept in a sealed file beside it: loaded, brought up to date from the events that
/// came since, and kept again when many came. Where no file fits, it is made anew from the whole journal.</summary>
internal sealed class JournalViewFile(Journal journal, string path, PassedOver passedOver)
{
    private const int WorthKeeping = 200;
    private const int Batch = 256;

    /// <summary>The events, oldest first.</summary>
    /// <exception cref="JournalReadException">The journal can't be read.</exception>
    public IReadOnlyList<JournalEvent> Present()
    {
        PresentEvents present = new();
        long had = Load(present);
        long last = Take(present, had);
        if (had > 0 && present.WentBack)
        {
            present = new PresentEvents();
            had = 0;
            last = Take(present, had);
        }

        // What was passed over may be read by the next version of the program: it must not be missing in a view that is kept.
        if (last - had >= WorthKeeping && passedOver.Lines.Count == 0)
        {
            present.Trim();
            Save(present, last);
        }

        return present.Events;
    }

    private long Take(PresentEvents present, long had)
    {
        long last = had;
        foreach ((long number, JournalEvent happened) in passedOver.Readable(journal.ReadFrom(had + 1, PassedOver.Try)))
        {
            present.Add(happened);
            last = number;
        }

        return last;
    }

    private long Load(PresentEvents present)
    {
        if (journal.LoadView(path) is not var (sequence, content))
        {
            return 0;
        }

        present.Restore([.. OrderedWork.InOrder(Bodies(content).Chunk(Batch), Decoded).SelectMany(batch => batch)]);
        return sequence;
    }

    private static JournalEvent[] Decoded(ReadOnlyMemory<byte>[] bodies) => Array.ConvertAll(bodies, body => JournalEventCodec.Decode(body.Span));

    private static IEnumerable<ReadOnlyMemory<byte>> Bodies(ReadOnlyMemory<byte> content)
    {
        for (ReadOnlyMemory<byte> rest = content; rest.Length > 0;)
        {
            int length = BinaryPrimitives.ReadInt32BigEndian(rest.Span);
            yield return rest.Slice(sizeof(int), length);
            rest = rest[(sizeof(int) + length)..];
        }
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
