namespace HandsFree.Store.Journaling;

/// <summary>Does the same work on many things with all processors and gives the results out in the order of the things.</summary>
public static class OrderedWork
{
    private const int AheadPerProcessor = 2;

    /// <summary>The results, in order. Things are taken one by one on the caller's thread, a few ahead of the result that is asked for.</summary>
    /// <typeparam name="TThing">What is worked on.</typeparam>
    /// <typeparam name="TResult">What comes of it.</typeparam>
    /// <param name="things">Big enough that one is worth a thread's while.</param>
    /// <param name="work">Safe on several threads at once; what it throws is thrown where its result would have come.</param>
    public static IEnumerable<TResult> InOrder<TThing, TResult>(IEnumerable<TThing> things, Func<TThing, TResult> work)
    {
        ArgumentNullException.ThrowIfNull(things);
        ArgumentNullException.ThrowIfNull(work);
        Queue<Task<TResult>> ahead = [];
        try
        {
            foreach (TThing thing in things)
            {
                ahead.Enqueue(Task.Run(() => work(thing)));
                if (ahead.Count > AheadPerProcessor * Environment.ProcessorCount)
                {
                    yield return ahead.Dequeue().GetAwaiter().GetResult();
                }
            }

            while (ahead.TryDequeue(out Task<TResult>? next))
            {
                yield return next.GetAwaiter().GetResult();
            }
        }
        finally
        {
            // Who stops early, or met an error, leaves no work behind that still uses what the work needs.
            foreach (Task<TResult> left in ahead)
            {
                ((IAsyncResult)left).AsyncWaitHandle.WaitOne();
            }
        }
    }
}
