namespace HandsFree.App.Hear;

/// <summary>The line of "hear" for one recording, for a person.</summary>
internal static class HeardFileText
{
    /// <summary>One line.</summary>
    public static string Of(HeardFile heard)
    {
        string time = FormattableString.Invariant($"{heard.Audio.TotalSeconds:0.0} s of audio, {heard.Decoding.TotalMilliseconds:0} ms");
        if (heard.Understood is not { } understood)
        {
            return $"{heard.File}: {heard.Outcome} ({time})";
        }

        string next = heard.RunnerUp is { } runnerUp ? FormattableString.Invariant($", margin {heard.Margin:0.0} to \"{runnerUp.Words}\"") : "";
        return FormattableString.Invariant(
            $"{heard.File}: \"{understood.Words}\" {MeaningJson.Of(understood)} (probability {understood.Probability:0.000}{next}; {time})");
    }
}
