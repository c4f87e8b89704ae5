namespace HandsFree.Core.Rules.Files;

/// <summary>Who approved a change of a rule, and when.</summary>
internal sealed record Approval(string By, DateOnly On)
{
    public string InWords => FormattableString.Invariant($"approved by {By} on {On:yyyy-MM-dd}");
}
