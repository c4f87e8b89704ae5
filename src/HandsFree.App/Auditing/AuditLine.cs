namespace HandsFree.App.Auditing;

/// <summary>One thing that an audit tells.</summary>
/// <param name="Group">Under which heading.</param>
/// <param name="At">When, as the event says.</param>
/// <param name="Person">Whose doing; null where nobody is known.</param>
/// <param name="Text">What, as a sentence.</param>
internal sealed record AuditLine(AuditGroup Group, DateTimeOffset At, string? Person, string Text);
