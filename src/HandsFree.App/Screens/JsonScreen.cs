using System.Text.Encodings.Web;
using System.Text.Json;
using HandsFree.App.Session;
using HandsFree.Core.Dialogue;

namespace HandsFree.App.Screens;

/// <summary>One JSON object a line for everything that happens, for scripts: it holds what is said, values among it.</summary>
/// <param name="board">The view model.</param>
/// <param name="input">Lines to type.</param>
/// <param name="output">The objects.</param>
internal sealed class JsonScreen(RoundBoard board, TextReader input, TextWriter output) : IRoundScreen
{
    private static readonly JsonSerializerOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private readonly PlainScreen keys = new(board, input, TextWriter.Null, texts: false);

    /// <inheritdoc/>
    public void Saw(SessionNote note)
    {
        if (Of(note) is { } line)
        {
            output.WriteLine(JsonSerializer.Serialize(line, Options));
        }
    }

    /// <inheritdoc/>
    public void Run(IRoundKeys keys, CancellationToken over) => this.keys.Run(keys, over);

    private static object? Of(SessionNote note) => note switch
    {
        SessionNote.Said s => new { at = s.At, said = s.Text, whyUnheard = s.WhyUnheard },
        SessionNote.Sounded s => new { at = s.At, tone = $"{s.Tone}" },
        SessionNote.Listens s => new { at = s.At, listens = $"{s.For.Kind}", awaited = s.For.Awaited?.ToString(), answerAwaited = s.For.AnswerAwaited },
        SessionNote.Heard { Event: DialogueEvent.Utterance u } s => new { at = s.At, heard = u.Words, probability = u.Probability, typed = u.Typed },
        SessionNote.Heard s => new { at = s.At, heard = (string?)null, outcome = s.Event?.GetType().Name ?? "Nothing" },
        SessionNote.Kept s => new { at = s.At, saved = s.FirstSequence, events = s.Events.Select(e => e.GetType().Name) },
        SessionNote.NotRead s => new { at = s.At, notRead = s.Lines },
        SessionNote.NotKept s => new { at = s.At, notSaved = s.Why },
        SessionNote.Microphone s => new { at = s.At, microphone = $"{s.State}", why = s.Why },
        SessionNote.Loudspeaker s => new { at = s.At, loudspeaker = s.WhySilent is null ? "Works" : "Lost", why = s.WhySilent },
        SessionNote.Quiet s => new { at = s.At, quiet = true },
        _ => null,
    };
}
