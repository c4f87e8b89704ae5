using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace HandsFree.App.ShiftChange;

/// <summary>Answers for a person and for a script.</summary>
internal static class AnswerWriter
{
    private static readonly JsonSerializerOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>What is spoken; below it the lines of a list that was asked for, where there are more than the one that was spoken.</summary>
    public static string Text(AnsweredQuestion answered)
    {
        IEnumerable<string> lines = answered.BeginsList && (answered.Items.Count > 1 || answered.Items.Any(item => item.Item.IsOverdue || item.Name is not null))
            ? answered.Items.Select(item => $"  {(item.Name is { } name ? $"[{name}] " : "")}{item.Item.Text}{(item.Item.IsOverdue ? " Overdue." : "")}")
            : [];
        return string.Join(Environment.NewLine, lines.Prepend(answered.Answer));
    }

    /// <summary>One JSON object, on one line.</summary>
    public static string Json(AnsweredQuestion answered) => JsonSerializer.Serialize(
        new
        {
            question = answered.Question,
            answer = answered.Answer,
            items = answered.Items.Select(item => new
            {
                room = item.Item.Room,
                bed = item.Item.Bed,
                name = item.Name,
                rank = item.Rank,
                text = item.Item.Text,
                overdue = item.Item.IsOverdue,
            }),
            since = answered.Since?.ToString("yyyy-MM-dd'T'HH:mmzzz", CultureInfo.InvariantCulture),
        },
        Options);
}
