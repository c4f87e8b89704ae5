using System.Text.Json.Serialization;

namespace HandsFree.Benchmarks.Results;

/// <summary>How a recording was heard.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<Verdict>))]
internal enum Verdict
{
    /// <summary>As it was meant.</summary>
    Right,

    /// <summary>As another meaning, and what was heard is a value: a reading, a count, a correction, a room.</summary>
    WrongValue,

    /// <summary>As another meaning that holds no value: a command, an answer, a guess.</summary>
    WrongOther,

    /// <summary>Not at all, though it is a sentence of the grammar in force: it has to be said again.</summary>
    NotHeard,

    /// <summary>It has a meaning but is no sentence of the grammar in force, and was not heard.</summary>
    OutsideGrammar,

    /// <summary>It was no reading, and was refused or known as a guess.</summary>
    Refused,

    /// <summary>It was no reading and became something.</summary>
    LetIn,
}
