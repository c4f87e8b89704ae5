using System.Runtime.InteropServices;
using HandsFree.Audio.Runtime;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Runtime;

public sealed partial class SilentRuntimeTests
{
    [Fact]
    public void Whoever_makes_a_session_has_set_the_variable_that_native_code_sees()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "the C library's environment of Windows is not asked here");
        SilentRuntime.Options().Dispose();
        Marshal.PtrToStringUTF8(GetEnvironment("ORT_DISABLE_TELEMETRY")).ShouldBe("1");
    }

    // POSIX.1-2017, getenv.
    [LibraryImport("libc", EntryPoint = "getenv", StringMarshalling = StringMarshalling.Utf8)]
    private static partial IntPtr GetEnvironment(string name);
}
