namespace HandsFree.Benchmarks.Hearing;

/// <summary>How a recording was heard.</summary>
internal enum Verdict
{
    /// <summary>As it was meant.</summary>
    Right,

    /// <summary>As another meaning.</summary>
    Wrong,

    /// <summary>Not at all: it has to be said again.</summary>
    NotHeard,

    /// <summary>It was no reading, and was refused or known as a guess.</summary>
    Refused,

    /// <summary>It was no reading and became one.</summary>
    LetIn,

    /// <summary>Words that the design does not use, not heard.</summary>
    Unused,
}
