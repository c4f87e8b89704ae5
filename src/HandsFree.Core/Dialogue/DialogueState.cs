using System.Collections.Immutable;
using HandsFree.Core.Journal;

namespace HandsFree.Core.Dialogue;

/// <summary>All that the dialogue knows between two events. Immutable; made by <see cref="DialogueMachine.Begin"/>.</summary>
public sealed record DialogueState
{
    internal DialogueState(string aide, string session) => (Aide, Session) = (aide, session);

    /// <summary>Which state this is.</summary>
    public StateKind Kind => Stage.Kind;

    /// <summary>What it listens for.</summary>
    public Listening Listening => Listens.For(this);

    /// <summary>What the screen shows.</summary>
    public ScreenView Screen => Screens.For(this);

    /// <summary>Whether the session is over.</summary>
    public bool IsEnded => Kind == StateKind.Ended;

    /// <summary>The id of the identified resident, or null.</summary>
    public string? Resident => Set?.Resident.Id;

    internal string Aide { get; init; }

    internal string Session { get; init; }

    internal Stage Stage { get; init; } = new Stage.AwaitingRoom();

    /// <summary>The number of the next id.</summary>
    internal int NextNumber { get; init; } = 1;

    /// <summary>All events that are known to be flushed, oldest first.</summary>
    internal ImmutableList<JournalEvent> Journal { get; init; } = [];

    /// <summary>Batches that are being written.</summary>
    internal ImmutableDictionary<string, ImmutableList<JournalEvent>> Writing { get; init; } =
        ImmutableDictionary<string, ImmutableList<JournalEvent>>.Empty;

    /// <summary>Events of the audit whose batch failed; they go with the next batch.</summary>
    internal ImmutableList<JournalEvent> Unwritten { get; init; } = [];

    /// <summary>The identified resident's set; null where nobody is identified.</summary>
    internal ResidentSet? Set { get; init; }

    /// <summary>What was in hand when the round was cut off, until identity is asked again; null where nothing was.</summary>
    internal Suspended? Suspended { get; init; }

    /// <summary>The sets of the residents that were left, by id.</summary>
    internal ImmutableDictionary<string, ResidentSet> Left { get; init; } = ImmutableDictionary<string, ResidentSet>.Empty;

    /// <summary>The resident at whom the aide stopped, for "continue"; null else.</summary>
    internal string? StoppedAt { get; init; }

    /// <summary>Pulse and pressure are read from a machine's display in this round.</summary>
    internal bool Machine { get; init; }

    /// <summary>What the screen says beside what is awaited, until something else happens; or empty.</summary>
    internal string Notice { get; init; } = "";

    /// <summary>Something was not understood since a value was saved: the next read-back names the room.</summary>
    internal bool NamesRoom { get; init; }

    /// <summary>The text that was said last, so that it is not said twice running.</summary>
    internal string LastSaid { get; init; } = "";
}
