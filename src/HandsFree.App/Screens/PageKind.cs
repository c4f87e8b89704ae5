namespace HandsFree.App.Screens;

/// <summary>The pages of the screen.</summary>
internal enum PageKind
{
    /// <summary>The round.</summary>
    Round,

    /// <summary>What can be said and typed.</summary>
    Help,

    /// <summary>Who has something due.</summary>
    Due,

    /// <summary>The open reports.</summary>
    Reports,
}
