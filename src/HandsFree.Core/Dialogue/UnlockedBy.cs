namespace HandsFree.Core.Dialogue;

/// <summary>With what a locked session was unlocked.</summary>
public enum UnlockedBy
{
    /// <summary>Her PIN, by keys.</summary>
    Pin,

    /// <summary>The digits of her choice, spoken.</summary>
    SpokenDigits,
}
