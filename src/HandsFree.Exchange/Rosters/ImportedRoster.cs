using HandsFree.Core.Files;

namespace HandsFree.Exchange.Rosters;

/// <summary>What came of reading a file of residents: all of them, or every error, never a part.</summary>
/// <param name="Residents">Empty where there are errors.</param>
/// <param name="Errors">Everything that is wrong, by line and column.</param>
/// <param name="Notes">What was left out on purpose, in words.</param>
public sealed record ImportedRoster(IReadOnlyList<ImportedResident> Residents, IReadOnlyList<FileError> Errors, IReadOnlyList<string> Notes)
{
    internal static ImportedRoster Of(IReadOnlyList<ImportedResident> residents, IReadOnlyList<FileError> errors, IReadOnlyList<string> notes) =>
        errors.Count > 0 ? new([], [.. errors.Distinct().OrderBy(e => e.Line).ThenBy(e => e.Column)], []) : new(residents, [], notes);
}
