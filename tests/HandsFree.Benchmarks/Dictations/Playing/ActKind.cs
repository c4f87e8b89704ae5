namespace HandsFree.Benchmarks.Dictations.Playing;

/// <summary>Kinds of things that are done in the room.</summary>
internal enum ActKind
{
    /// <summary>The aide says who it is about: room, name, birthday.</summary>
    Identity,

    /// <summary>She says a whole reading, or a number that was asked for.</summary>
    Reading,

    /// <summary>She says the number again because the program wants this value twice.</summary>
    SecondSaying,

    /// <summary>Yes to a read-back.</summary>
    Yes,

    /// <summary>No, or a correction.</summary>
    No,

    /// <summary>An answer to a question about the reading.</summary>
    Answer,

    /// <summary>A command.</summary>
    Command,

    /// <summary>Her own doing or the room's: a guess, a cough, talk, silence, "stop".</summary>
    Disturbance,
}
