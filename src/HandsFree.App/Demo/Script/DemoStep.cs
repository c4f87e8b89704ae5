using System.Text.Json.Serialization;

namespace HandsFree.App.Demo.Script;

/// <summary>One thing that the aide means to do with a resident. Names of clips unless it says "text".</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "do")]
[JsonDerivedType(typeof(Measure), "measure")]
[JsonDerivedType(typeof(Count), "count")]
[JsonDerivedType(typeof(Guess), "guess")]
[JsonDerivedType(typeof(NotTaken), "not taken")]
[JsonDerivedType(typeof(Chat), "chat")]
[JsonDerivedType(typeof(Rest), "rest")]
[JsonDerivedType(typeof(Wait), "wait")]
[JsonDerivedType(typeof(Word), "say")]
internal abstract record DemoStep
{
    /// <summary>Says a reading.</summary>
    public sealed record Measure : DemoStep
    {
        /// <summary>What she says.</summary>
        public required string Say { get; init; }

        /// <summary>Text of what she meant, where the clip is a slip; what she says otherwise.</summary>
        public string? Meant { get; init; }
    }

    /// <summary>Counts with the program's tones.</summary>
    public sealed record Count : DemoStep
    {
        /// <summary>How she asks for the count.</summary>
        public required string Say { get; init; }

        /// <summary>The number that she counted.</summary>
        public required string Counted { get; init; }

        /// <summary>The number of breaths that she counts after it, for 60 seconds; null where the program does not ask for them.</summary>
        public string? Breaths { get; init; }

        /// <summary>Text of the reading that it makes.</summary>
        public required string Meant { get; init; }
    }

    /// <summary>Says a guess; it must be refused.</summary>
    public sealed record Guess : DemoStep
    {
        /// <summary>The guess.</summary>
        public required string Say { get; init; }
    }

    /// <summary>Says that something was not taken.</summary>
    public sealed record NotTaken : DemoStep
    {
        /// <summary>What and why.</summary>
        public required string Say { get; init; }
    }

    /// <summary>Somebody says something that is none of the program's business; it must stay silent.</summary>
    public sealed record Chat : DemoStep
    {
        /// <summary>What is said.</summary>
        public required string Say { get; init; }
    }

    /// <summary>Waits until the program says that a rest is over.</summary>
    public sealed record Rest : DemoStep;

    /// <summary>Waits until the program says something by itself.</summary>
    public sealed record Wait : DemoStep
    {
        /// <summary>Text of what it says, or a part of it.</summary>
        public required string Hears { get; init; }
    }

    /// <summary>Says a word about the round.</summary>
    public sealed record Word : DemoStep
    {
        /// <summary>What she says.</summary>
        public required string Say { get; init; }

        /// <summary>Text of the answer, or a part of it.</summary>
        public required string Hears { get; init; }
    }
}
