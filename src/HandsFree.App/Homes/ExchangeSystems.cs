namespace HandsFree.App.Homes;

/// <summary>The systems of the home's identifiers, as home.json names them.</summary>
/// <param name="Residents">A URI.</param>
/// <param name="People">A URI, or null.</param>
/// <param name="Places">A URI, or null.</param>
internal sealed record ExchangeSystems(string Residents, string? People, string? Places);
