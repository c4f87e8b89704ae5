using HandsFree.Audio.Endpointing;
using HandsFree.Core.Quantities;

namespace HandsFree.App.Session;

/// <summary>What the home decides about the session around the dialogue.</summary>
internal sealed record SessionSettings
{
    /// <summary>Quiet after a question until it is asked again.</summary>
    public TimeSpan AnswerQuiet { get; init; } = TimeSpan.FromSeconds(8);

    /// <summary>Quiet while nothing was asked, until the program names the next reading.</summary>
    public TimeSpan LeadQuiet { get; init; } = TimeSpan.FromSeconds(20);

    /// <summary>Time in which nothing was accepted, until the session is locked (safety 5).</summary>
    public TimeSpan LockAfter { get; init; } = TimeSpan.FromMinutes(10);

    /// <summary>After the loudspeaker's latency, for the room.</summary>
    public TimeSpan EchoTail { get; init; } = TimeSpan.FromMilliseconds(250);

    /// <summary>A time between two frames longer than this is a gap, in which something may have been missed.</summary>
    public TimeSpan LongestGap { get; init; } = TimeSpan.FromMilliseconds(100);

    /// <summary>When speech begins and when it has ended.</summary>
    public EndpointerOptions Endpointing { get; init; } = new();

    /// <summary>The unit of a bare weight.</summary>
    public WeightUnit WeightUnit { get; init; } = WeightUnit.Pounds;
}
