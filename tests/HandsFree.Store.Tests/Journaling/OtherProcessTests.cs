using HandsFree.Store.Journaling;
using Shouldly;
using Xunit;

namespace HandsFree.Store.Tests.Journaling;

public sealed class OtherProcessTests : IDisposable
{
    private const int Kills = 20;

    private readonly JournalFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task No_announced_event_is_missing_after_the_writer_is_killed()
    {
        Random random = new(20);
        for (int kill = 0; kill < Kills; kill++)
        {
            using WriterProcess writer = new(_folder.Path);
            long announced = 0;
            for (int wait = random.Next(1, 60); wait > 0; wait--)
            {
                announced = (await writer.NextAsync()).ShouldNotBeNull();
            }

            announced = await writer.KillAsync(announced);

            using IJournal journal = _folder.Open();
            journal.Count.ShouldBeInRange(announced, announced + 1, $"kill {kill}");
            foreach (JournalEntry entry in journal.ReadFrom(1))
            {
                entry.Body.ToArray().ShouldBe(Writer.Body(entry.Sequence), $"kill {kill}, event {entry.Sequence}");
            }
        }
    }

    [Fact]
    public async Task Another_process_reads_while_one_writes()
    {
        using WriterProcess writer = new(_folder.Path);
        (await writer.NextAsync()).ShouldBe(1);
        using IJournal reader = _folder.Open();

        for (int look = 0; look < 10; look++)
        {
            long announced = (await writer.NextAsync()).ShouldNotBeNull();
            reader.Count.ShouldBeGreaterThanOrEqualTo(announced);
            reader.ReadFrom(1).Select(entry => entry.Body.ToArray()).Take((int)announced)
                .ShouldBe(Enumerable.Range(1, (int)announced).Select(number => Writer.Body(number)));
        }
    }
}
