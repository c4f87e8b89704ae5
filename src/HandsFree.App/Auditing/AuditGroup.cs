namespace HandsFree.App.Auditing;

/// <summary>The parts of an audit, in the order in which a supervisor reads them.</summary>
internal enum AuditGroup
{
    /// <summary>What should not have happened, or only in need.</summary>
    Alarming,

    /// <summary>Tries to open that failed.</summary>
    Failed,

    /// <summary>Who may open, and with what.</summary>
    People,

    /// <summary>Roster, settings, rules.</summary>
    Home,

    /// <summary>What left the program.</summary>
    Out,

    /// <summary>Who looked at what.</summary>
    Looks,
}
