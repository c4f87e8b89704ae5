using HandsFree.Core.Observations;

namespace HandsFree.Exchange.Readings;

/// <summary>One column that says how a reading was taken.</summary>
/// <param name="Name">The column.</param>
/// <param name="Wanted">What may stand in it, for who wrote something else.</param>
/// <param name="Write">The cell; null where nothing was said.</param>
/// <param name="Read">Adds what the cell says; null where it can't be read.</param>
internal sealed record CircumstanceColumn(
    string Name, string Wanted, Func<Circumstances, string?> Write, Func<Circumstances, string, Circumstances?> Read);
