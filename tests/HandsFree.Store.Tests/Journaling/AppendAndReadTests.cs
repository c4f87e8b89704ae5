using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using HandsFree.Store.Journaling;
using Shouldly;
using Xunit;

namespace HandsFree.Store.Tests.Journaling;

public sealed class AppendAndReadTests : IDisposable
{
    private readonly JournalFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_new_journal_is_empty_and_numbers_from_1()
    {
        using IJournal journal = _folder.Open();

        journal.Count.ShouldBe(0);
        journal.ReadFrom(1).ShouldBeEmpty();
        journal.Append("first"u8.ToArray()).ShouldBe(1);
        journal.Append("second"u8.ToArray()).ShouldBe(2);
        journal.Count.ShouldBe(2);
    }

    [Fact]
    public void A_reopened_journal_goes_on_with_the_next_number()
    {
        using (IJournal before = _folder.Open())
        {
            before.Append(new byte[] { 1 });
            before.Append(new byte[] { 2 });
        }

        using IJournal journal = _folder.Open();

        journal.Count.ShouldBe(2);
        journal.Append(new byte[] { 3 }).ShouldBe(3);
        Bodies(journal, 1).ShouldBe([[1], [2], [3]]);
    }

    [Fact]
    public void Reading_begins_at_the_number_asked_for_and_ends_with_the_last()
    {
        using IJournal journal = _folder.Open();
        journal.AppendAll([new byte[] { 1 }, new byte[] { 2 }, new byte[] { 3 }]).ShouldBe(3);

        journal.ReadFrom(2).Select(entry => entry.Sequence).ShouldBe([2L, 3L]);
        journal.ReadFrom(4).ShouldBeEmpty();
        Should.Throw<ArgumentOutOfRangeException>(() => journal.ReadFrom(0));
    }

    [Fact]
    public void Appending_no_event_is_a_mistake_of_the_caller()
    {
        using IJournal journal = _folder.Open();

        Should.Throw<ArgumentException>(() => journal.AppendAll([]));
        journal.Count.ShouldBe(0);
    }

    [Fact]
    public void What_is_appended_while_reading_is_not_in_that_reading_and_is_not_held_up_by_it()
    {
        using IJournal journal = _folder.Open();
        journal.AppendAll([new byte[] { 1 }, new byte[] { 2 }]);

        List<long> seen = [];
        foreach (JournalEntry entry in journal.ReadFrom(1))
        {
            seen.Add(entry.Sequence);
            journal.Append(new byte[] { 9 });
        }

        seen.ShouldBe([1L, 2L]);
        journal.Count.ShouldBe(4);
    }

    [Fact]
    public async Task Several_threads_append_without_a_gap_or_a_double()
    {
        using IJournal journal = _folder.Open();

        long[][] numbers = await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(
            () => Enumerable.Range(0, 25).Select(i => journal.Append(new byte[] { (byte)i })).ToArray(),
            TestContext.Current.CancellationToken)));

        numbers.SelectMany(each => each).Order().ShouldBe(Enumerable.Range(1, 100).Select(i => (long)i));
    }

    [Fact]
    public void Two_openings_of_one_file_take_turns_in_writing()
    {
        using IJournal one = _folder.Open();
        using IJournal other = _folder.Open();

        one.Append(new byte[] { 1 }).ShouldBe(1);
        other.Append(new byte[] { 2 }).ShouldBe(2);
        one.Append(new byte[] { 3 }).ShouldBe(3);

        other.Count.ShouldBe(3);
    }

    [Fact]
    public void Typed_events_go_through_the_codec_that_comes_in()
    {
        using IJournal bytes = _folder.Open();
        EventJournal<int> journal = new(bytes, number => BitConverter.GetBytes(number), entry => BitConverter.ToInt32(entry.Body.Span));

        journal.Append(-7).ShouldBe(1);
        journal.AppendAll([int.MaxValue, 0]).ShouldBe(3);

        journal.Count.ShouldBe(3);
        journal.ReadFrom(2).ShouldBe([(2L, int.MaxValue), (3L, 0)]);
    }

    [Property(MaxTest = 30)]
    public Property Bytes_come_back_exactly_as_they_were_appended()
    {
        Arbitrary<byte[][]> batches = ArbMap.Default.ArbFor<byte[][]>().Filter(all => all is not null && all.All(one => one is not null));
        return Prop.ForAll(batches, bodies =>
        {
            using JournalFolder folder = new();
            using (IJournal journal = folder.Open())
            {
                foreach (byte[] body in bodies)
                {
                    journal.Append(body);
                }
            }

            using IJournal reopened = folder.Open();
            Bodies(reopened, 1).ShouldBe(bodies);
        });
    }

    [Fact]
    public void An_event_of_5_megabytes_comes_back_as_it_was()
    {
        byte[] body = new byte[5_000_000];
        new Random(5).NextBytes(body);
        using IJournal journal = _folder.Open();

        journal.Append(body);

        journal.ReadFrom(1).Single().Body.Span.SequenceEqual(body).ShouldBeTrue();
    }

    private static byte[][] Bodies(IJournal journal, long from) => [.. journal.ReadFrom(from).Select(entry => entry.Body.ToArray())];
}
