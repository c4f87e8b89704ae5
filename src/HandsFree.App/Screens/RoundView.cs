namespace HandsFree.App.Screens;

/// <summary>What can be seen of a round at one moment. No name ever; nothing of a resident while locked.</summary>
internal sealed record RoundView
{
    /// <summary>Room and bed, or empty.</summary>
    public string Place { get; init; } = "";

    /// <summary>The quantity that is read back, or empty; for five seconds.</summary>
    public string What { get; init; } = "";

    /// <summary>The value, or empty; for five seconds.</summary>
    public string Digits { get; init; } = "";

    /// <summary>What is awaited, in a few words.</summary>
    public string Awaited { get; init; } = "";

    /// <summary>What was said, where nobody can hear it; for five seconds.</summary>
    public string Text { get; init; } = "";

    /// <summary>A sign of the microphone's state, three characters.</summary>
    public string Mark { get; init; } = "";

    /// <summary>The microphone's state in words.</summary>
    public string Microphone { get; init; } = "";

    /// <summary>The clock of a count or a rest, or empty.</summary>
    public string Clock { get; init; } = "";

    /// <summary>Whether an answer is awaited: then the clock does not take the value's place.</summary>
    public bool AnswerAwaited { get; init; }

    /// <summary>What is due next of this resident, or empty.</summary>
    public string Next { get; init; } = "";

    /// <summary>What is wrong and what to do, or empty.</summary>
    public string Warning { get; init; } = "";

    /// <summary>Whether the record is locked.</summary>
    public bool IsLocked { get; init; }
}
