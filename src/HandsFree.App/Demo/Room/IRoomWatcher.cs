using HandsFree.App.Demo.Script;

namespace HandsFree.App.Demo.Room;

/// <summary>Looks on in the room; told on the room's thread.</summary>
internal interface IRoomWatcher
{
    /// <summary>A clip begins.</summary>
    void Speaks(DateTimeOffset at, DemoClip clip);

    /// <summary>Everybody only waits, and the time is moved on.</summary>
    void MovesOn(DateTimeOffset at);

    /// <summary>A frame passed.</summary>
    /// <param name="aide">What was spoken in it.</param>
    /// <param name="program">What was played in it.</param>
    void Passed(ReadOnlySpan<float> aide, ReadOnlySpan<float> program);
}
