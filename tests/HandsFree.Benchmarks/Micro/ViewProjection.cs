using BenchmarkDotNet.Attributes;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Handover;
using HandsFree.Core.Journal;

namespace HandsFree.Benchmarks.Micro;

/// <summary>From the journal's events to the view of the handover.</summary>
public class ViewProjection
{
    private IReadOnlyList<JournalEvent> events = [];

    /// <summary>How many events: a shift, and some months.</summary>
    [Params(1_000, 100_000)]
    public int Events { get; set; }

    /// <summary>Before the clock runs.</summary>
    [GlobalSetup]
    public void Setup() => events = ShiftEvents.Make(Events);

    /// <summary>All of it.</summary>
    [Benchmark]
    public object Handover() => HandoverView.From(events, ShiftEvents.Roster, new(new DialogueSettings().Due));
}
