namespace HandsFree.Benchmarks.Dictations.Sound;

/// <summary>The voices of the people in the room.</summary>
internal interface IVoiceBox
{
    /// <summary>Voices that an aide can have.</summary>
    IReadOnlyList<string> Names { get; }

    /// <summary>Says something; the same words of the same voice are always the same samples.</summary>
    /// <param name="voice">Of <see cref="Names"/>.</param>
    /// <param name="text">The words.</param>
    /// <returns>16 kHz mono.</returns>
    float[] Speak(string voice, string text);
}
