using HandsFree.Core.Quantities;

namespace HandsFree.Core.Dialogue;

/// <summary>What a state listens for.</summary>
/// <param name="Kind">The grammar.</param>
/// <param name="Awaited">The vital sign whose bare value is awaited or was read back; null where none is.</param>
/// <param name="AnswerAwaited">Whether something was asked: then silence is reported as NothingHeard after the home's time, and
/// speech that fits nothing gets an answer.</param>
public sealed record Listening(ListeningKind Kind, VitalSign? Awaited = null, bool AnswerAwaited = true);
