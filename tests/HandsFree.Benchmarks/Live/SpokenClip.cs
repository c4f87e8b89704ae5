using HandsFree.App.Demo.Script;
using HandsFree.Core.Dialogue;

namespace HandsFree.Benchmarks.Live;

/// <summary>A clip that the aide played.</summary>
/// <param name="Clip">Which.</param>
/// <param name="At">When she began to write it.</param>
/// <param name="Listening">What was listened for.</param>
internal sealed record SpokenClip(DemoClip Clip, DateTimeOffset At, Listening Listening);
