using HandsFree.TestKit;

namespace HandsFree.Scenarios.Demo;

/// <summary>The program as it is built for its users, for tests that start it in a process of its own. What lies beside the tests lacks
/// the packages that their web server's framework brings.</summary>
internal static class BuiltProgram
{
    /// <summary>HandsFree.dll of the configuration that the tests were built in.</summary>
    public static string Path { get; } = System.IO.Path.Combine(
        Shared.Repository, "src", "HandsFree.App", "bin", Configuration, "net10.0", "HandsFree.dll");

    // The tests lie in bin/CONFIGURATION/FRAMEWORK.
    private static string Configuration => new DirectoryInfo(AppContext.BaseDirectory).Parent!.Name;
}
