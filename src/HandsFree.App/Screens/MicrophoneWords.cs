using HandsFree.App.Session;

namespace HandsFree.App.Screens;

/// <summary>The microphone's state as a sign and in words; a colour is never the only sign.</summary>
internal static class MicrophoneWords
{
    public static (string Mark, string Words) Of(MicrophoneState state, bool speaking) => state switch
    {
        MicrophoneState.Lost => ("(!)", "MICROPHONE GONE: plug it in, or type"),
        MicrophoneState.None => ("[k]", "KEYS ONLY: type what you would say"),
        _ when speaking => ("(>)", "speaking"),
        MicrophoneState.Closed => ("( )", "microphone off: space opens it"),
        MicrophoneState.Open => ("(*)", "LISTENING"),
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "no such state"),
    };
}
