namespace HandsFree.Benchmarks.Dictations.Saying;

/// <summary>What is said in a room and is no business of the program.</summary>
internal static class SmallTalk
{
    /// <summary>By the aide.</summary>
    public static IReadOnlyList<string> Aide { get; } =
    [
        "let me fix your pillow", "good morning how did you sleep", "turn the television down", "you have two visitors today",
        "lunch is at twelve thirty", "give me your arm please", "that is a lovely sweater", "I will be back in ten minutes",
        "are you warm enough", "there are six of us today",
    ];

    /// <summary>By the resident, a yes and a no among it.</summary>
    public static IReadOnlyList<string> Resident { get; } =
    [
        "yes", "no", "oh that hurts a little", "I had three grandchildren visit", "my daughter is coming on sunday", "what time is lunch",
        "I am eighty two you know", "is it high", "okay dear", "I don't want it",
    ];
}
