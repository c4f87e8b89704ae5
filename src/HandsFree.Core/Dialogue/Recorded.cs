namespace HandsFree.Core.Dialogue;

/// <summary>A turn with events to write, and what is said once they are saved.</summary>
internal sealed record Recorded(Turn Turn, string Text)
{
    /// <summary>What is said where there is nothing else to say; it is a tone then.</summary>
    public const string Saved = "Saved.";

    /// <summary>Waits for the journal, says the text and goes on with the resident. The last one of a set says where to go on.</summary>
    public Turn Save() => Turn.Save(Text.Length == 0 && SetDone.Words(Turn) is { Length: > 0 } done ? done : Sentence.Join(Saved, Text), Turn.Set.Base());
}
