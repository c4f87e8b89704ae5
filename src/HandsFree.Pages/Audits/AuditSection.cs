namespace HandsFree.Pages.Audits;

/// <summary>One part of an audit.</summary>
/// <param name="Heading">Its heading.</param>
/// <param name="Lines">What happened, a line each, oldest first; empty where nothing did.</param>
public sealed record AuditSection(string Heading, IReadOnlyList<string> Lines);
