using System.Globalization;
using HandsFree.App.Demo.Room;
using HandsFree.App.Session;
using HandsFree.Benchmarks.Dictations.Counting;
using HandsFree.Benchmarks.Dictations.Saying;
using HandsFree.Benchmarks.Dictations.Sound;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;

namespace HandsFree.Benchmarks.Dictations.Playing;

/// <summary>Writes down what happens in a visit, and judges it against what the aide meant. Told on two threads, never at once: the
/// room's time stands while the session works.</summary>
internal sealed class SessionScribe(double missRate, int visit, string voice, DemoClock clock) : ISessionWatcher, IAideWatcher
{
    private readonly Lock gate = new();
    private readonly List<string> lines = [];
    private readonly List<DictationRow> rows = [];
    private readonly List<Finding> findings = [];
    private readonly List<ReadingRecorded> saved = [];
    private readonly DateTimeOffset began = clock.GetLocalNow();
    private Dictation? current;
    private string? lastText;
    private int firstLine;
    private int prompts;
    private DateTimeOffset since;
    private DateTimeOffset? atTheBed;
    private TimeSpan aide;
    private TimeSpan program;

    /// <summary>All of it, at the end.</summary>
    public VisitResult Result()
    {
        lock (gate)
        {
            return new VisitResult(rows, findings, ((atTheBed ?? clock.GetLocalNow()) - began).TotalSeconds);
        }
    }

    /// <summary>Somebody is heard.</summary>
    public void Speaks(DateTimeOffset at, Utterance utterance, TimeSpan length)
    {
        lock (gate)
        {
            aide += length;
            string who = utterance.Voice == voice ? "aide" : utterance.Voice == Utterance.Cough ? "cough" : "resident";
            Line(at, who, $"\"{utterance.Text}\"  [{utterance.Voice}, noise {utterance.Variant}]");
        }
    }

    /// <summary>The aide uses the keys.</summary>
    public void Types(DateTimeOffset at, string text)
    {
        lock (gate)
        {
            Line(at, "keys", $"\"{text}\"");
        }
    }

    /// <summary>A frame passed; so much of it the program was heard.</summary>
    public void Passed(TimeSpan heard) => program += heard;

    /// <summary>Something that should not happen.</summary>
    public void Found(string kind, string what)
    {
        lock (gate)
        {
            findings.Add(new Finding(missRate, visit, kind, what, [.. lines.Skip(Math.Max(0, Math.Min(firstLine, lines.Count - 12)))]));
        }
    }

    /// <inheritdoc/>
    public void Begins(Dictation dictation)
    {
        lock (gate)
        {
            atTheBed ??= clock.GetLocalNow();
            (current, firstLine, prompts, since, aide, program) = (dictation, lines.Count, 0, clock.GetLocalNow(), TimeSpan.Zero, TimeSpan.Zero);
            saved.Clear();
        }
    }

    /// <inheritdoc/>
    public void Ends(Dictation dictation, bool heardSaved)
    {
        lock (gate)
        {
            Verdict verdict = dictation.Refused || saved.Count == 0 ? Verdict.NotSaved
                : saved.TrueForAll(r => Measured.Of(r.Confirmed.Reading).Is(dictation.Truth)) ? Verdict.Right : Verdict.Wrong;
            int again = dictation.Acts.Count(a => a.Again);
            rows.Add(new DictationRow
            {
                MissRate = missRate,
                Visit = visit,
                Number = rows.Count + 1,
                Voice = voice,
                Said = dictation.Sentence,
                Truth = dictation.Truth.ToString(),
                Sign = dictation.Truth.Sign,
                Verdict = verdict,
                Saved = [.. saved.Select(r => Measured.Of(r.Confirmed.Reading).ToString())],
                Again = again,
                SaidTwiceAsPlanned = dictation.Acts.Any(a => a.Kind == ActKind.SecondSaying),
                Disturbed = dictation.Disturbed,
                Recheck = dictation.Recheck,
                Counted = dictation.WithTones,
                Refused = dictation.Refused,
                Prompts = prompts,
                WrongReadBacks = dictation.WrongReadBacks.Count,
                Missed = dictation.WrongReadBacks.Values.Count(noticed => !noticed),
                Seconds = (clock.GetLocalNow() - since).TotalSeconds,
                AideSeconds = aide.TotalSeconds,
                ProgramSeconds = program.TotalSeconds,
                Exchange = verdict != Verdict.Right || again > 0 ? [.. lines.Skip(firstLine)] : null,
            });
            if (!heardSaved && verdict != Verdict.NotSaved)
            {
                Found("saved, and the aide does not know", dictation.Truth.ToString());
            }

            current = null;
            saved.Clear();
            firstLine = lines.Count;
        }
    }

    /// <inheritdoc/>
    public void TakesTheKeys() => Found("typed at the door", "room and bed, name or birthday were not understood");

    /// <inheritdoc/>
    public void Puzzled(string sentence) => Found("not understood by the aide", sentence);

    /// <inheritdoc/>
    public void Saw(SessionNote note)
    {
        lock (gate)
        {
            switch (note)
            {
                case SessionNote.Said said:
                    prompts++;
                    Line(said.At, "program", said.Text);
                    if (said.Text == lastText)
                    {
                        Found("same text twice", said.Text);
                    }

                    lastText = said.Text;
                    break;
                case SessionNote.Sounded tone:
                    Line(tone.At, "program", $"({tone.Tone})");
                    break;
                case SessionNote.Heard heard:
                    Line(heard.At, "heard", Heard(heard.Event));
                    break;
                case SessionNote.Kept kept:
                    foreach (JournalEvent happened in kept.Events)
                    {
                        Keep(kept.At, happened);
                    }

                    break;
                case SessionNote.NotKept failed:
                    Line(failed.At, "journal", failed.Why);
                    break;
            }
        }
    }

    private void Keep(DateTimeOffset at, JournalEvent happened)
    {
        switch (happened)
        {
            case ReadingRecorded reading:
                saved.RemoveAll(r => r.Id == reading.Amends);
                saved.Add(reading);
                Line(at, "journal", $"{Measured.Of(reading.Confirmed.Reading)}, confirmed by {reading.Confirmed.How}");
                if (current is not { WasSaid: true, Refused: false })
                {
                    Found(Finding.Unsaid, Measured.Of(reading.Confirmed.Reading).ToString());
                }

                break;
            case NotTakenRecorded missing:
                Line(at, "journal", $"not taken: {missing.ReadBack}");
                if (current is not { Refused: true } || missing.ReadBack != $"{current.Truth.Sign}, refused")
                {
                    Found(Finding.Unsaid, $"not taken: {missing.ReadBack}");
                }

                break;
            case EnteredInError gone:
                saved.RemoveAll(r => r.Id == gone.Event);
                Line(at, "journal", "entered in error");
                break;
        }
    }

    private static string Heard(DialogueEvent? happened) => happened switch
    {
        DialogueEvent.Utterance u => string.Create(
            CultureInfo.InvariantCulture, $"\"{u.Words}\"  probability {u.Probability:0.00}, margin {u.Margin:0.0}{(u.RunnerUpWords is { } next ? $", next \"{next}\"" : "")}"),
        null => "(nothing, or not for the question that stands)",
        _ => $"({happened.GetType().Name})",
    };

    private void Line(DateTimeOffset at, string who, string text) =>
        lines.Add(string.Create(CultureInfo.InvariantCulture, $"{at:HH:mm:ss.f}  {who,-8}  {text}"));
}
