using HandsFree.App.Session;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Session;

/// <summary>The session's queue.</summary>
public sealed class EventQueueTests
{
    [Fact]
    public async Task Who_posts_into_a_full_queue_waits_and_nothing_is_lost()
    {
        EventQueue queue = new();
        for (int i = 0; i < EventQueue.Capacity; i++)
        {
            queue.Post(new SessionEvent.QuietOver(i));
        }

        queue.Waits.ShouldBe(0);
        Task late = Task.Run(() => queue.Post(new SessionEvent.QuietOver(EventQueue.Capacity)), TestContext.Current.CancellationToken);
        List<int> taken = [];
        for (int i = 0; i <= EventQueue.Capacity; i++)
        {
            while (i == 0 && queue.Waits == 0)
            {
                await Task.Yield();
            }

            taken.Add(((SessionEvent.QuietOver)queue.Take(TestContext.Current.CancellationToken)).Watch);
            queue.Done();
        }

        await late;
        queue.Waits.ShouldBe(1);
        taken.ShouldBe(Enumerable.Range(0, EventQueue.Capacity + 1));
    }

    [Fact]
    public void The_queue_is_idle_only_when_what_was_taken_has_been_handled()
    {
        EventQueue queue = new();
        queue.Post(new SessionEvent.PlaybackEnded());
        queue.Take(TestContext.Current.CancellationToken);
        using CancellationTokenSource given = new(TimeSpan.FromMilliseconds(50));
        Should.Throw<OperationCanceledException>(() => queue.WaitUntilIdle(given.Token));
        queue.Done();
        queue.WaitUntilIdle(TestContext.Current.CancellationToken);
    }

    [Fact]
    public void What_comes_after_the_end_is_counted_and_holds_nobody_up()
    {
        EventQueue queue = new();
        queue.Post(new SessionEvent.PlaybackEnded());
        queue.Close();
        queue.Post(new SessionEvent.PlaybackEnded());
        queue.Late.ShouldBe(1);
        queue.WaitUntilIdle(TestContext.Current.CancellationToken);
    }
}
