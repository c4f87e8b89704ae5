using System.Buffers;
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
    public static byte[] Encode(JournalEvent entry)
    {
        ArrayBufferWriter<byte> bytes = new(1024);
        using (Utf8JsonWriter writer = new(bytes))
        {
            writer.WriteStartObject();
            writer.WriteNumber("schema"u8, SchemaVersion);
            writer.WritePropertyName("entry"u8);
            JsonSerializer.Serialize(writer, entry, Options);
            writer.WriteEndObject();
        }

        return bytes.WrittenSpan.ToArray();
    }

    /// <summary>The event of some bytes.</summary>
    /// <exception cref="InvalidDataException">The bytes are no event, or of a newer schema; the message says which.</exception>
    public static JournalEvent Decode(ReadOnlySpan<byte> bytes)
    {
        try
        {
            Utf8JsonReader reader = new(bytes);
            return Entry(ref reader);
        }
        catch (Exception wrong) when (wrong is JsonException or NotSupportedException or ArgumentException or InvalidOperationException)
        {
            throw new InvalidDataException($"not a journal event: {wrong.Message}", wrong);
        }
    }

    // Read in one pass, without a document in between. The schema first: a newer program's event may have a form that can't be read here.
    private static JournalEvent Entry(ref Utf8JsonReader reader)
    {
        if (!reader.Read() || reader.TokenType != JsonTokenType.StartObject || !Named(ref reader, "schema"u8) || !reader.TryGetInt32(out int schema) || schema < 1)
        {
            throw new InvalidDataException("journal event without schema or entry");
        }

        if (schema > SchemaVersion)
        {
            throw new InvalidDataException($"journal event of schema {schema}, this program reads up to {SchemaVersion}: update the program");
        }

        if (!Named(ref reader, "entry"u8) || reader.TokenType != JsonTokenType.StartObject)
        {
            throw new InvalidDataException("journal event without schema or entry");
        }

        JournalEvent entry = JsonSerializer.Deserialize<JournalEvent>(ref reader, Options)!;
        if (!reader.Read() || reader.TokenType != JsonTokenType.EndObject || reader.Read())
        {
            throw new JsonException("something follows the entry");
        }

        return entry;
    }

    private static bool Named(ref Utf8JsonReader reader, ReadOnlySpan<byte> name) =>
        reader.Read() && reader.TokenType == JsonTokenType.PropertyName && reader.ValueTextEquals(name) && reader.Read();
}
