namespace HandsFree.App.Demo.Script;

/// <summary>What the aide does next.</summary>
internal abstract record AideMove
{
    /// <summary>She, or somebody in the room, says something.</summary>
    /// <param name="Clip">What.</param>
    public sealed record Speak(DemoClip Clip) : AideMove;

    /// <summary>She says nothing.</summary>
    public sealed record Wait : AideMove;

    /// <summary>She has nothing left to do, or gives up.</summary>
    public sealed record Leave : AideMove;
}
