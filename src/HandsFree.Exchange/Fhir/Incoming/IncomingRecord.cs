using HandsFree.Core.Files;

namespace HandsFree.Exchange.Fhir.Incoming;

/// <summary>What a bundle of another system holds that is of use here.</summary>
/// <param name="Readings">Past readings.</param>
/// <param name="Limits">Limits, to be proposed.</param>
/// <param name="LeftOut">What was left out and why, a line each.</param>
/// <param name="Errors">Why the file can't be read; then there is nothing else.</param>
public sealed record IncomingRecord(
    IReadOnlyList<IncomingReading> Readings, IReadOnlyList<IncomingLimit> Limits, IReadOnlyList<string> LeftOut, IReadOnlyList<FileError> Errors)
{
    internal static IncomingRecord Broken(IReadOnlyList<FileError> errors) => new([], [], [], errors);
}
