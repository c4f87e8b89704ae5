using System.Text.Json;

namespace HandsFree.Store.Devices;

/// <summary>Counts wrong PINs and makes who guesses wait: three are free, then 30 seconds, doubled each time, at most an hour. It is kept
/// on the disk; setting the clock back begins the wait anew.</summary>
internal sealed class Lockout(string file, TimeProvider time)
{
    private const int FreeTries = 3;
    private static readonly TimeSpan First = TimeSpan.FromSeconds(30);
    private static readonly TimeSpan Longest = TimeSpan.FromHours(1);

    /// <summary>How long until the next try; zero where one is free.</summary>
    public TimeSpan Remaining(byte[] slot) => With(all =>
    {
        string name = Convert.ToHexStringLower(slot);
        if (!all.TryGetValue(name, out Tries? tries))
        {
            return TimeSpan.Zero;
        }

        DateTimeOffset now = time.GetUtcNow();
        if (now < tries.Last)
        {
            all[name] = tries = tries with { Last = now };
        }

        TimeSpan left = Wait(tries.Wrong) - (now - tries.Last);
        return left > TimeSpan.Zero ? left : TimeSpan.Zero;
    });

    /// <summary>A wrong PIN.</summary>
    /// <returns>How long until the next try.</returns>
    public TimeSpan Wrong(byte[] slot) => With(all =>
    {
        string name = Convert.ToHexStringLower(slot);
        Tries tries = new((all.GetValueOrDefault(name)?.Wrong ?? 0) + 1, time.GetUtcNow());
        all[name] = tries;
        return Wait(tries.Wrong);
    });

    /// <summary>The right PIN: the count begins anew.</summary>
    public void Right(byte[] slot)
    {
        if (File.Exists(file))
        {
            With(all => all.Remove(Convert.ToHexStringLower(slot)));
        }
    }

    private static TimeSpan Wait(int wrong)
    {
        if (wrong <= FreeTries)
        {
            return wrong < FreeTries ? TimeSpan.Zero : First;
        }

        double seconds = First.TotalSeconds * Math.Pow(2, Math.Min(wrong - FreeTries, 20));
        return seconds < Longest.TotalSeconds ? TimeSpan.FromSeconds(seconds) : Longest;
    }

    // One process at a time: who tries PINs in many at once is counted all the same.
    private T With<T>(Func<Dictionary<string, Tries>, T> work)
    {
        using FileStream guard = FileGuard.Take($"{file}.lock", time);
        Dictionary<string, Tries> all = File.Exists(file)
            ? JsonSerializer.Deserialize<Dictionary<string, Tries>>(PrivateFile.Read(file)) ?? []
            : [];
        byte[] before = JsonSerializer.SerializeToUtf8Bytes(all);
        T result = work(all);
        byte[] after = JsonSerializer.SerializeToUtf8Bytes(all);
        if (!before.AsSpan().SequenceEqual(after))
        {
            PrivateFile.Write(file, after);
        }

        return result;
    }

    private sealed record Tries(int Wrong, DateTimeOffset Last);
}
