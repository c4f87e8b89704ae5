namespace HandsFree.App.Composition;

/// <summary>The kinds of things that the log may hold.</summary>
internal enum LogKind
{
    /// <summary>A command ended with exit code 0.</summary>
    Done,

    /// <summary>A command ended with exit code 1.</summary>
    CheckFailed,

    /// <summary>A command ended with exit code 2.</summary>
    BadInput,

    /// <summary>An engine was started; the time is its loading.</summary>
    EngineStarted,

    /// <summary>A piece of speech was decoded; the time is the decoding.</summary>
    Decoded,

    /// <summary>Events were appended to the journal and flushed.</summary>
    Saved,

    /// <summary>Events could not be appended.</summary>
    SaveFailed,

    /// <summary>Events of another program can't be read and were passed over.</summary>
    NotRead,

    /// <summary>A session began.</summary>
    SessionBegan,

    /// <summary>A session ended.</summary>
    SessionEnded,

    /// <summary>The program met what it did not expect.</summary>
    Bug,
}
