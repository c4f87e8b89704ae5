using System.Runtime.InteropServices;

namespace HandsFree.Benchmarks.Results;

/// <summary>The machine that a run was made on; no name of it.</summary>
/// <param name="Cores">Processors that the program may use.</param>
/// <param name="Platform">Operating system and architecture.</param>
/// <param name="Runtime">The .NET runtime.</param>
internal sealed record HostFacts(int Cores, string Platform, string Runtime)
{
    /// <summary>Of this machine.</summary>
    public static HostFacts Here { get; } = new(
        Environment.ProcessorCount, $"{RuntimeInformation.OSDescription} {RuntimeInformation.ProcessArchitecture}", RuntimeInformation.FrameworkDescription);
}
