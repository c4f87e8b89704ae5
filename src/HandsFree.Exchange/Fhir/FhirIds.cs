using System.Security.Cryptography;
using System.Text;
using HandsFree.Exchange.Fhir.Codes;
using Hl7.Fhir.Model;

namespace HandsFree.Exchange.Fhir;

/// <summary>Ids that follow from what they name: the same event has the same id on every day, so that what is sent again is known again.</summary>
/// <param name="home">What tells this home's record from all others: something that never changes.</param>
public sealed class FhirIds(string home)
{
    /// <summary>A UUID of something of this home: version 8 of RFC 9562, from SHA-256 as in its appendix B.2 (from memory).</summary>
    public string Uuid(string what)
    {
        byte[] hash = SHA256.HashData(Encoding.UTF8.GetBytes($"{home}\n{what}"));
        hash[6] = (byte)((hash[6] & 0x0F) | 0x80);
        hash[8] = (byte)((hash[8] & 0x3F) | 0x80);
        return new Guid(hash.AsSpan(0, 16), bigEndian: true).ToString("D");
    }

    /// <summary>The UUID as a URI.</summary>
    public string Urn(string what) => $"urn:uuid:{Uuid(what)}";

    /// <summary>The identifier of what an event became.</summary>
    public Identifier Of(string eventId) => new(FhirSystems.Uri, Urn($"event/{eventId}"));
}
