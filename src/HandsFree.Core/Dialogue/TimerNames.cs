using HandsFree.Core.Quantities;

namespace HandsFree.Core.Dialogue;

/// <summary>The names of the dialogue's timers.</summary>
internal static class TimerNames
{
    public const string Count = "count";

    /// <summary>The rest before a pressure.</summary>
    public const string Rest = "rest";

    /// <summary>A minute after standing up.</summary>
    public const string StandingOne = "standing one minute";

    /// <summary>Three minutes after standing up.</summary>
    public const string StandingThree = "standing three minutes";

    /// <summary>The rest before a recheck.</summary>
    public static string Recheck(VitalSign sign) => $"recheck {SignNames.Of(sign)}";
}
