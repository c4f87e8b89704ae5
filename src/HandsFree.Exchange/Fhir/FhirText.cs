using System.Text;
using Hl7.Fhir.Model;
using Hl7.Fhir.Serialization;

namespace HandsFree.Exchange.Fhir;

/// <summary>Resources as JSON.</summary>
public static class FhirText
{
    private static readonly FhirJsonSerializer Serializer = new();

    /// <summary>UTF-8, on one line.</summary>
    public static byte[] Bytes(Resource resource) => Encoding.UTF8.GetBytes(Serializer.SerializeToString(resource));
}
