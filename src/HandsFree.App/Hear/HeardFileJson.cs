using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace HandsFree.App.Hear;

/// <summary>The line of "hear --json" for one recording.</summary>
internal static class HeardFileJson
{
    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>One JSON object, on one line.</summary>
    public static string Of(HeardFile heard)
    {
        using MemoryStream bytes = new();
        using (Utf8JsonWriter json = new(bytes, Options))
        {
            json.WriteStartObject();
            json.WriteString("file", heard.File);
            json.WriteString("engine", heard.Engine);
            json.WriteString("outcome", heard.Outcome);
            WriteMeaning(json, "meaning", heard.Understood);
            json.WriteString("words", heard.Understood?.Words ?? "");
            WriteNumber(json, "probability", heard.Understood?.Probability, 6);
            WriteNumber(json, "margin", heard.Margin, 4);
            WriteMeaning(json, "runnerUp", heard.RunnerUp);
            WriteNumber(json, "audioSeconds", heard.Audio.TotalSeconds, 3);
            WriteNumber(json, "decodeMilliseconds", heard.Decoding.TotalMilliseconds, 1);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray());
    }

    private static void WriteMeaning(Utf8JsonWriter json, string name, Speech.Candidate? candidate)
    {
        json.WritePropertyName(name);
        if (candidate is null)
        {
            json.WriteNullValue();
        }
        else
        {
            json.WriteRawValue(MeaningJson.Of(candidate));
        }
    }

    private static void WriteNumber(Utf8JsonWriter json, string name, double? number, int decimals)
    {
        if (number is { } n)
        {
            json.WriteNumber(name, Math.Round(n, decimals));
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
