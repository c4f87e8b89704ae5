using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;

namespace HandsFree.Store.Tests.Journaling;

/// <summary>What the test's executable does when it is started as a child that writes: it appends to the journal that an
/// environment variable names and prints each sequence number once the append has returned, until it is killed.</summary>
internal static class Writer
{
    public const string Variable = "HANDSFREE_TEST_JOURNAL";

    /// <summary>The event with that number: its own number in words, of a length that differs from event to event.</summary>
    public static byte[] Body(long sequence) =>
        Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat(sequence.ToString(CultureInfo.InvariantCulture) + " ", (int)(sequence * 37 % 400) + 1)));

    [ModuleInitializer]
    internal static void Run()
    {
        string? path = Environment.GetEnvironmentVariable(Variable);
        if (path is null)
        {
            return;
        }

        JournalOpening opening = Journal.Open(path, new JournalAccess(Path.Combine(Path.GetDirectoryName(path)!, "state"), new Credential.Device(), TimeProvider.System));
        using IJournal journal = opening.Journal ?? throw new InvalidOperationException(opening.Error!.Message);
        for (long next = journal.Count + 1; ; next++)
        {
            Console.WriteLine(journal.Append(Body(next)));
            Console.Out.Flush();
        }
    }
}
