namespace HandsFree.App.Demo.Script;

/// <summary>The aide at one resident.</summary>
/// <param name="Resident">The resident's id in the roster.</param>
/// <param name="Room">The clip that names room and bed.</param>
/// <param name="Born">The clip that names the birthday.</param>
/// <param name="Steps">What she does there.</param>
internal sealed record DemoVisit(string Resident, string Room, string Born, IReadOnlyList<DemoStep> Steps);
