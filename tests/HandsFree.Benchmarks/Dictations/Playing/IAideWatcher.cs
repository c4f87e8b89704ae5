namespace HandsFree.Benchmarks.Dictations.Playing;

/// <summary>Looks over the aide's shoulder.</summary>
internal interface IAideWatcher
{
    /// <summary>She takes a reading in hand.</summary>
    void Begins(Dictation dictation);

    /// <summary>She is done with it, or gave it up.</summary>
    /// <param name="dictation">The reading.</param>
    /// <param name="heardSaved">She was told that it is saved.</param>
    void Ends(Dictation dictation, bool heardSaved);

    /// <summary>The program said something that she can make nothing of.</summary>
    void Puzzled(string sentence);

    /// <summary>At the door she was not understood so often that she takes the keys; with the resident she speaks again.</summary>
    void TakesTheKeys();
}
