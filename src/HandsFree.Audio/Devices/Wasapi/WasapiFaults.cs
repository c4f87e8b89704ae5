namespace HandsFree.Audio.Devices.Wasapi;

/// <summary>What WASAPI's errors mean (audioclient.h).</summary>
internal static class WasapiFaults
{
    private const int AccessDenied = unchecked((int)0x80070005);
    private const int NotFound = unchecked((int)0x80070490);
    private const int DeviceInvalidated = unchecked((int)0x88890004);
    private const int DeviceInUse = unchecked((int)0x8889000A);
    private const int ServiceNotRunning = unchecked((int)0x88890010);

    internal static SoundFault Of(Exception error, string device) => error.HResult switch
    {
        AccessDenied => new(SoundProblem.Refused, $"\"{device}\": access refused; allow it under Settings, Privacy & security, Microphone, \"Let desktop apps access your microphone\""),
        NotFound => new(SoundProblem.NoDevice, $"\"{device}\" is not there; plug it in, or choose another"),
        DeviceInvalidated => new(SoundProblem.Lost, $"\"{device}\" is gone; plug it in again"),
        DeviceInUse => new(SoundProblem.Busy, $"\"{device}\" is used by another program; end that one"),
        ServiceNotRunning => new(SoundProblem.NoSystem, "Windows' sound service does not run; start the service \"Windows Audio\""),
        _ => new(SoundProblem.Lost, $"\"{device}\": {error.Message.ReplaceLineEndings(" ")}"),
    };
}
