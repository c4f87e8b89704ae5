namespace HandsFree.Scenarios.Session;

/// <summary>Something that happens in the room once it has been quiet for a moment.</summary>
/// <param name="After">The least time since what happened before it.</param>
/// <param name="Sound">What is heard, 16 kHz; null where something is typed.</param>
/// <param name="Typed">What is typed; null where something is heard.</param>
internal sealed record RoomAction(TimeSpan After, float[]? Sound, string? Typed)
{
    /// <summary>The quiet before anything happens.</summary>
    public static readonly TimeSpan Quiet = TimeSpan.FromSeconds(1.5);

    /// <summary>600 ms of a loud square wave.</summary>
    public static float[] Buzz { get; } = [.. Enumerable.Range(0, 30 * 320).Select(i => i % 80 < 40 ? 0.4f : -0.4f)];
}
