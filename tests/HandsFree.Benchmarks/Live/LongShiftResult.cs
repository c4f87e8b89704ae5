using HandsFree.App.Session;

namespace HandsFree.Benchmarks.Live;

/// <summary>What a long shift came to.</summary>
/// <param name="End">How the session ended.</param>
/// <param name="Readings">Readings in the journal.</param>
/// <param name="Frames">Frames that reached the session.</param>
/// <param name="Lost">Frames that were lost with the device.</param>
/// <param name="Losses">How often it went.</param>
/// <param name="Late">Events that came after the session's end.</param>
/// <param name="Memory">Live managed bytes after each hour, after a collection.</param>
internal sealed record LongShiftResult(SessionEnd End, int Readings, long Frames, long Lost, int Losses, int Late, IReadOnlyList<long> Memory);
