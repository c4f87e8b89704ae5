using System.Text.Json;
using System.Text.Json.Serialization;

namespace HandsFree.Core.Journal;

/// <summary>Journal events as bytes (UTF-8 JSON) and back; the store keeps the bytes and never looks into them.</summary>
public static class JournalEventCodec
{
    /// <summary>The version of the form that is written. Older ones stay readable for ever.</summary>
    public const int SchemaVersion = 1;

    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = false,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false), new QuantityConverter() },
    };

    /// <summary>The bytes of an event: {"schema": 1, "entry": {"type": …}}.</summary>
    public static byte[] Encode(JournalEvent entry) =>
        JsonSerializer.SerializeToUtf8Bytes(new Envelope(SchemaVersion, JsonSerializer.SerializeToElement(entry, Options)), Options);

    /// <summary>The event of some bytes.</summary>
    /// <exception cref="InvalidDataException">The bytes are no event, or of a newer schema; the message says which.</exception>
    public static JournalEvent Decode(ReadOnlySpan<byte> bytes)
    {
        try
        {
            // The schema first: a newer program's event may have a form that can't be read here.
            Envelope? envelope = JsonSerializer.Deserialize<Envelope>(bytes, Options);
            return envelope switch
            {
                { Schema: > SchemaVersion } => throw new InvalidDataException(
                    $"journal event of schema {envelope.Schema}, this program reads up to {SchemaVersion}: update the program"),
                { Schema: SchemaVersion, Entry.ValueKind: JsonValueKind.Object } => envelope.Entry.Deserialize<JournalEvent>(Options)!,
                _ => throw new InvalidDataException("journal event without schema or entry"),
            };
        }
        catch (Exception wrong) when (wrong is JsonException or NotSupportedException or ArgumentException)
        {
            throw new InvalidDataException($"not a journal event: {wrong.Message}", wrong);
        }
    }

    private sealed record Envelope(int Schema, JsonElement Entry);
}
