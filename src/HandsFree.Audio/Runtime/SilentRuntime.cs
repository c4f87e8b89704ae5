using System.Runtime.InteropServices;
using Microsoft.ML.OnnxRuntime;

namespace HandsFree.Audio.Runtime;

/// <summary>
/// The only way to ONNX Runtime. Its library sends telemetry by default and looks the receiver's host up while it runs; the variable
/// ORT_DISABLE_TELEMETRY stops that, if it is set before the library is loaded.
/// </summary>
public static partial class SilentRuntime
{
    private const string Variable = "ORT_DISABLE_TELEMETRY";
    private static readonly Lazy<bool> silenced = new(Silence);

    /// <summary>New options of a session; the first call silences the runtime. The caller disposes them.</summary>
    /// <exception cref="InvalidOperationException">The variable could not be set, so the runtime must not be loaded.</exception>
    public static SessionOptions Options() => silenced.Value ? new() : throw new InvalidOperationException($"{Variable} could not be set");

    private static bool Silence()
    {
        Environment.SetEnvironmentVariable(Variable, "1");

        // Outside of Windows .NET keeps variables of its own, which native code does not see.
        return OperatingSystem.IsWindows() || setenv(Variable, "1", 1) == 0;
    }

    /// <summary>The C library's (POSIX.1-2017, setenv): 0 where the variable was set.</summary>
    [LibraryImport("libc", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int setenv(string name, string value, int overwrite);
}
