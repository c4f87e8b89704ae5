namespace HandsFree.Core.Dialogue;

/// <summary>A turn with events to write, and what is said once they are saved.</summary>
internal sealed record Recorded(Turn Turn, string Text)
{
    /// <summary>Waits for the journal, says the text and goes on with the resident.</summary>
    public Turn Save() => Turn.Save(Sentence.Join("Saved.", Text), Turn.Set.Base());
}
