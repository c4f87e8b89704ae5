using HandsFree.Benchmarks.Dictations.Sound;

namespace HandsFree.Benchmarks.Dictations.Playing;

/// <summary>What the aide does next.</summary>
internal abstract record AideMove
{
    /// <summary>She, or somebody in the room, is heard.</summary>
    public sealed record Sound(Utterance Utterance) : AideMove;

    /// <summary>She uses the keys.</summary>
    public sealed record Types(string Text) : AideMove;

    /// <summary>Nothing; she waits for the program.</summary>
    public sealed record Wait : AideMove;

    /// <summary>She gives the round up.</summary>
    public sealed record Leave : AideMove;
}
