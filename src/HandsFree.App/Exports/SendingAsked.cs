namespace HandsFree.App.Exports;

/// <summary>What somebody wants to be sent.</summary>
/// <param name="To">The server's base, as typed.</param>
/// <param name="TokenFile">A file with a bearer token, or null.</param>
/// <param name="CertificateFile">The certificate of the authority that vouches for the server, or null.</param>
/// <param name="Unit">Of one unit, or of all.</param>
/// <param name="Since">The number of the last entry that the receiver has; null for what the journal knows.</param>
/// <param name="NewPatients">Bundles bring the Patients along.</param>
internal sealed record SendingAsked(string To, string? TokenFile, string? CertificateFile, string? Unit, long? Since, bool NewPatients);
