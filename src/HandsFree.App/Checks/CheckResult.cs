namespace HandsFree.App.Checks;

/// <summary>One check of the self-test.</summary>
/// <param name="Name">What was checked.</param>
/// <param name="State">How it ended.</param>
/// <param name="Text">What was found, and what to do where it is not as it should be.</param>
internal sealed record CheckResult(string Name, CheckState State, string Text)
{
    /// <summary>The state's word.</summary>
    public string Word => State switch
    {
        CheckState.Ok => "ok",
        CheckState.Warning => "warning",
        CheckState.Failed => "failed",
        _ => throw new InvalidOperationException($"no such state: {State}"),
    };
}
