namespace HandsFree.Core.Dialogue;

/// <summary>How far a posture test is.</summary>
internal enum PostureStep
{
    /// <summary>None is done.</summary>
    None,

    /// <summary>The pressure lying down is awaited.</summary>
    Lying,

    /// <summary>"Standing" is awaited.</summary>
    StandingUp,

    /// <summary>The pressure after one minute of standing is awaited.</summary>
    AfterOneMinute,

    /// <summary>The pressure after three minutes of standing is awaited.</summary>
    AfterThreeMinutes,
}
