using System.Collections.Concurrent;

namespace HandsFree.TestKit;

/// <summary>Watches the tests that run: one that runs longer than the limit is named.</summary>
/// <param name="limit">How long a test may run.</param>
/// <param name="time">Says how long it ran.</param>
/// <param name="hung">Is told the names of those that ran longer, with their minutes.</param>
public sealed class TestWatch(TimeSpan limit, TimeProvider time, Action<string> hung) : IDisposable
{
    private static readonly TimeSpan LookEvery = TimeSpan.FromSeconds(10);

    private readonly ConcurrentDictionary<string, (string Name, long Began)> running = new();
    private readonly Lock gate = new();
    private ITimer? timer;

    /// <summary>A test begins.</summary>
    /// <param name="id">Its id in this run.</param>
    /// <param name="name">Its name.</param>
    public void Began(string id, string name)
    {
        running[id] = (name, time.GetTimestamp());
        lock (gate)
        {
            timer ??= time.CreateTimer(_ => Look(), null, LookEvery, LookEvery);
        }
    }

    /// <summary>A test ended, however.</summary>
    public void Ended(string id) => running.TryRemove(id, out _);

    /// <inheritdoc/>
    public void Dispose() => timer?.Dispose();

    private void Look()
    {
        string[] late = [.. running.Values.Where(r => time.GetElapsedTime(r.Began) > limit).Select(r => r.Name).Order(StringComparer.Ordinal)];
        if (late.Length > 0)
        {
            hung($"longer than {limit.TotalMinutes:0} minutes: {string.Join("; ", late)}");
        }
    }
}
