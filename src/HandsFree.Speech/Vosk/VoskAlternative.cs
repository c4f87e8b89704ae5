using System.Text.Json;

namespace HandsFree.Speech.Vosk;

/// <summary>One way to understand an utterance.</summary>
/// <param name="Words">Parted by single spaces; may be empty and may hold "[unk]".</param>
/// <param name="Score">The library's "confidence" with alternatives on: a log likelihood, no probability.</param>
internal readonly record struct VoskAlternative(string Words, double Score)
{
    /// <summary>Reads a result that was asked for with alternatives.</summary>
    internal static IReadOnlyList<VoskAlternative> ParseAll(string json)
    {
        using JsonDocument result = JsonDocument.Parse(json);
        if (!result.RootElement.TryGetProperty("alternatives", out JsonElement list))
        {
            return [];
        }

        return [.. list.EnumerateArray().Select(item => new VoskAlternative(
            item.GetProperty("text").GetString()!.Trim(),
            item.GetProperty("confidence").GetDouble()))];
    }
}
