using HandsFree.Core.Dialogue;
using HandsFree.Core.Handover;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using HandsFree.Core.Rounds;

namespace HandsFree.App.Homes;

/// <summary>How one home works: what home.json says, else the defaults.</summary>
internal sealed record HomeSettings
{
    /// <summary>The home's name, or null.</summary>
    public string? Name { get; init; }

    /// <summary>The home's time zone.</summary>
    public required TimeZoneInfo TimeZone { get; init; }

    /// <summary>The unit of the temperatures in roster.json.</summary>
    public TemperatureUnit TemperatureUnit { get; init; } = TemperatureUnit.Fahrenheit;

    /// <summary>The unit of a weight that is spoken without one, and of the weights in roster.json.</summary>
    public WeightUnit WeightUnit { get; init; } = WeightUnit.Pounds;

    /// <summary>The units of roster.json.</summary>
    public RosterUnits RosterUnits => new(TemperatureUnit, WeightUnit);

    /// <summary>The shifts of a day, by their beginning.</summary>
    public IReadOnlyList<Shift> Shifts { get; init; } = [new("day", new(7, 0)), new("evening", new(15, 0)), new("night", new(23, 0))];

    /// <summary>After what time something is overdue.</summary>
    public Overdue Overdue { get; init; } = Overdue.Default;

    /// <summary>Which of two words is said.</summary>
    public Wording Wording { get; init; } = new("refused");

    /// <summary>The engine that hears, or null for the best that is here.</summary>
    public string? Engine { get; init; }

    /// <summary>The id of who is at work where nobody is named.</summary>
    public string Aide { get; init; } = "aide";

    /// <summary>Seconds of a pulse count, 30 or 60.</summary>
    public int PulseCountSeconds { get; init; } = 30;

    /// <summary>Who allowed this home to count breaths for 30 seconds, and when; null where nobody did.</summary>
    public ShortCountOfBreaths? BreathsInThirtySeconds { get; init; }

    /// <summary>After a longer pause identity is asked again.</summary>
    public TimeSpan LongestPause { get; init; } = TimeSpan.FromMinutes(10);

    /// <summary>How long after its shift it can be read what a round was told, word for word; readings stay.</summary>
    public TimeSpan WordsReadable { get; init; } = TimeSpan.FromDays(1);

    /// <summary>After this quiet, where an answer is awaited, nothing was heard.</summary>
    public TimeSpan AnswerAwaited { get; init; } = TimeSpan.FromSeconds(8);

    /// <summary>After this quiet, where no answer is awaited, the program asks for what is next.</summary>
    public TimeSpan LeadAfter { get; init; } = TimeSpan.FromSeconds(20);

    /// <summary>After this time in which nothing was accepted, the session is locked.</summary>
    public TimeSpan LockAfter { get; init; } = TimeSpan.FromMinutes(10);

    /// <summary>Whether spoken digits of her choice unlock a session, not only the PIN by keys.</summary>
    public bool UnlocksBySpokenDigits { get; init; }

    /// <summary>Keeping recordings, which somebody must have approved; null: none is kept.</summary>
    public KeepingAudio? KeepingAudio { get; init; }

    /// <summary>The systems of the home's identifiers, for other programs; null where the home names none.</summary>
    public ExchangeSystems? Exchange { get; init; }

    /// <summary>Whether NEWS2 is shown beside the decisions; it needs the consciousness, which has to be asked.</summary>
    public bool News2 { get; init; }

    /// <summary>Whether names stand beside room and bed in what handover and report print; they are never spoken there.</summary>
    public bool NamesOnScreen { get; init; }

    /// <summary>What a round takes from everyone, in the order in which it asks.</summary>
    public IReadOnlyList<VitalSign> Due { get; init; } = new DialogueSettings().Due;

    /// <summary>What a round takes.</summary>
    public RoundPlan Round => new(Due);

    /// <summary>The moment in the home's time zone.</summary>
    public DateTimeOffset Here(DateTimeOffset moment) => TimeZoneInfo.ConvertTime(moment, TimeZone);

    /// <summary>The day in the home's time zone.</summary>
    public DateOnly Today(TimeProvider time) => DateOnly.FromDateTime(Here(time.GetUtcNow()).DateTime);

    /// <summary>When the shifts begin.</summary>
    public ShiftClock Clock => new(TimeZone, [.. Shifts.Select(shift => shift.Begins)]);

    /// <summary>When the shift of a moment began.</summary>
    public DateTimeOffset ShiftBegan(DateTimeOffset moment) => Clock.Began(moment);

    /// <summary>What the dialogue wants to know of it.</summary>
    public DialogueSettings ForDialogue() => new()
    {
        LongestPause = LongestPause,
        WeightUnit = WeightUnit,
        PulseCountSeconds = PulseCountSeconds,
        UnlocksBySpokenDigits = UnlocksBySpokenDigits,
        BreathsInThirtySeconds = BreathsInThirtySeconds is not null,
        Due = Due,
        Shifts = Clock,
        Overdue = Overdue,
    };
}
