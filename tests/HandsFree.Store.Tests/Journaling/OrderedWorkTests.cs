using HandsFree.Store.Journaling;
using Shouldly;
using Xunit;

namespace HandsFree.Store.Tests.Journaling;

public sealed class OrderedWorkTests : IDisposable
{
    private readonly JournalFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Results_come_in_the_order_of_the_things_however_long_each_takes()
    {
        Random chance = new(5);
        int[] spins = [.. Enumerable.Range(0, 200).Select(_ => chance.Next(1, 20_000))];
        OrderedWork.InOrder(Enumerable.Range(0, 200), i =>
        {
            Thread.SpinWait(spins[i]);
            return i;
        }).ShouldBe(Enumerable.Range(0, 200));
    }

    [Fact]
    public void What_the_work_throws_comes_in_its_turn_and_nothing_runs_on()
    {
        int running = 0;
        List<int> got = [];
        Should.Throw<FormatException>(() =>
        {
            foreach (int result in OrderedWork.InOrder(Enumerable.Range(0, 100), i =>
            {
                Interlocked.Increment(ref running);
                int result = i == 7 ? throw new FormatException("seven") : i;
                return result;
            }))
            {
                got.Add(result);
            }
        }).Message.ShouldBe("seven");
        got.ShouldBe([0, 1, 2, 3, 4, 5, 6]);
        int then = running;
        Thread.SpinWait(100_000);
        running.ShouldBe(then);
    }

    [Fact]
    public void A_journal_read_by_all_processors_gives_the_events_in_order_and_names_the_one_that_was_altered()
    {
        const int Events = 1500;
        using (IJournal journal = _folder.Open())
        {
            journal.AppendAll([.. Enumerable.Range(1, Events).Select(i => (ReadOnlyMemory<byte>)Writer.Body(i))]);
            ((Store.Journaling.Journal)journal).ReadFrom(1, entry => (entry.Sequence, Convert.ToHexString(entry.Body.Span)))
                .ShouldBe(Enumerable.Range(1, Events).Select(i => ((long)i, Convert.ToHexString(Writer.Body(i)))));
            ((Store.Journaling.Journal)journal).ReadFrom(1400, entry => entry.Sequence).Count().ShouldBe(101);
        }

        using (Microsoft.Data.Sqlite.SqliteConnection other = _folder.OpenWithSqlite())
        {
            other.Run("DROP TRIGGER event_is_never_changed; UPDATE event SET body = zeroblob(length(body)) WHERE sequence = 1000;");
        }

        using IJournal damaged = _folder.Open();
        List<long> read = [];
        Should.Throw<JournalReadException>(() => read.AddRange(((Store.Journaling.Journal)damaged).ReadFrom(1, entry => entry.Sequence)))
            .Message.ShouldContain("event 1000 is not as it was written");
    }
}
