using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;

namespace HandsFree.Core.Dialogue.Recovery;

/// <summary>What a dialogue was told, as bytes (UTF-8 JSON behind one byte of version) and back, exactly: the dialogue does with what was
/// read what it did with what was written.</summary>
public static class DialogueEventCodec
{
    /// <summary>The form that is written. A round that was told in another one is not told again.</summary>
    public const byte Version = 1;

    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals,
        RespectNullableAnnotations = true,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false), new QuantityConverter() },
        TypeInfoResolver = new DefaultJsonTypeInfoResolver { Modifiers = { Named } },
    };

    /// <summary>The bytes of an event.</summary>
    public static byte[] Encode(DialogueEvent happened) => [Version, .. JsonSerializer.SerializeToUtf8Bytes(happened, Options)];

    /// <summary>The event of some bytes.</summary>
    /// <exception cref="InvalidDataException">The bytes are no event, or of another version.</exception>
    public static DialogueEvent Decode(ReadOnlySpan<byte> bytes)
    {
        if (bytes is not [Version, .. var body])
        {
            throw new InvalidDataException($"not told in the form {Version}");
        }

        try
        {
            return JsonSerializer.Deserialize<DialogueEvent>(body, Options) ?? throw new InvalidDataException("nothing was told");
        }
        catch (Exception wrong) when (wrong is JsonException or NotSupportedException or ArgumentException or InvalidOperationException)
        {
            throw new InvalidDataException($"nothing that a dialogue is told: {wrong.Message}", wrong);
        }
    }

    // A base and the records in it: each by its own name.
    private static void Named(JsonTypeInfo info)
    {
        if (info.Type != typeof(DialogueEvent) && info.Type != typeof(Meaning) && info.Type != typeof(SinceSaid))
        {
            return;
        }

        info.PolymorphismOptions = new JsonPolymorphismOptions { TypeDiscriminatorPropertyName = "is" };
        foreach (Type kind in info.Type.GetNestedTypes().Where(info.Type.IsAssignableFrom))
        {
            info.PolymorphismOptions.DerivedTypes.Add(new JsonDerivedType(kind, JsonNamingPolicy.KebabCaseLower.ConvertName(kind.Name)));
        }
    }
}
