using HandsFree.Benchmarks.Dictations.Saying;
using HandsFree.Benchmarks.Dictations.Sound;
using HandsFree.Core.Residents;

namespace HandsFree.Benchmarks.Dictations.Playing;

/// <summary>The aide at one resident: goes through her plan, hears what the program says as text, and answers it. She knows nothing of
/// the program but its words.</summary>
internal sealed partial class SimulatedAide(
    Sayings sayings, Habits habits, VisitPlan plan, Resident resident, string voice, string residentVoice, Random random, IAideWatcher watcher)
{
    private const int MostActs = 10;
    private const int MostMoves = 200;
    private const int MostTriesAtTheDoor = 6;
    private const int MostGoodbyes = 2;
    private const int Variants = 2;

    private readonly Dictionary<string, int> saidAtTheDoor = [];
    private Prompt? standing;
    private Dictation? current;
    private bool identified;
    private bool silent;
    private bool atTheKeys;
    private bool tryAgainAfterCancel;
    private bool wasLeftOpen;
    private int triesAtTheDoor;
    private int goodbyes;
    private int moves;

    /// <summary>Why she gave the round up; null where she did not.</summary>
    public string? GaveUp { get; private set; }

    /// <summary>Her turn.</summary>
    /// <param name="texts">What the program has said since she was last heard, in order.</param>
    public AideMove Next(IReadOnlyList<string> texts)
    {
        silent = silent && texts.Count == 0;
        bool strange = false;
        foreach (string text in texts)
        {
            strange = Listen(Prompt.Of(text));
        }

        if (silent || standing?.Wants == Wants.Counting)
        {
            return new AideMove.Wait();
        }

        if (triesAtTheDoor > MostTriesAtTheDoor && !atTheKeys)
        {
            (atTheKeys, triesAtTheDoor) = (true, 0);
            watcher.TakesTheKeys();
        }

        GaveUp = moves > MostMoves ? "too many turns"
            : triesAtTheDoor > MostTriesAtTheDoor ? "room and bed, name or birthday were not understood"
            : goodbyes > MostGoodbyes ? "goodbye was not understood"
            : null;
        if (GaveUp is not null)
        {
            return new AideMove.Leave();
        }

        // At the door only questions about the resident are expected.
        AideMove move = strange && !identified && standing is null ? Command("stop") : Answer();
        moves += move is AideMove.Wait ? 0 : 1;
        return move;
    }

    /// <summary>The round is over, whatever she had in hand.</summary>
    public void Finish()
    {
        if (current is not null)
        {
            End(heardSaved: false);
        }
    }

    // Understands; true where she can make nothing of it.
    private bool Listen(Prompt prompt)
    {
        identified |= prompt.Ready;
        triesAtTheDoor = prompt.Ready ? 0 : triesAtTheDoor;
        atTheKeys &= !prompt.Ready;
        standing = prompt.Wants switch
        {
            Wants.Options => standing,
            Wants.Nothing => prompt.Saved || prompt.Dropped || prompt.Ready ? null : standing,
            // The list of what can be said names no question: she remembers which one it was.
            Wants.Confirmation when prompt.HasOptions && standing is { Wants: Wants.SayingAgain } => standing,
            _ => prompt,
        };
        if (prompt.Saved && current is not null)
        {
            plan.After(current, prompt.Instruction, random);
            End(heardSaved: true);
        }
        else if (prompt.Dropped && current is not null)
        {
            Dropped();
        }

        if (prompt.CountSeconds is { } seconds && current is { WithTones: true })
        {
            current.Counted = (int)current.Truth.First * seconds / 60;
        }

        if (prompt.RestOver)
        {
            plan.RestIsOver();
        }

        foreach (string sentence in prompt.Instruction.Length > 0 ? [] : prompt.Strange)
        {
            watcher.Puzzled(sentence);
        }

        return prompt is { Strange.Count: > 0, Instruction.Length: 0, Wants: Wants.Nothing };
    }

    // After her own cancel she begins anew; what the program left open she tries once more.
    private void Dropped()
    {
        bool anew = tryAgainAfterCancel || !wasLeftOpen;
        wasLeftOpen |= !tryAgainAfterCancel;
        tryAgainAfterCancel = false;
        if (!anew || current!.Acts.Count > MostActs)
        {
            End(heardSaved: false);
        }
    }

    private void End(bool heardSaved)
    {
        watcher.Ends(current!, heardSaved);
        (current, wasLeftOpen, tryAgainAfterCancel) = (null, false, false);
    }

    private AideMove Answer() => standing?.Wants switch
    {
        Wants.Place => AtTheDoor(),
        Wants.Name => Identity(sayings.Answer(standing.Text.Contains(resident.Name, StringComparison.Ordinal), voice, Times("name"))),
        Wants.Birthday => Identity(sayings.Birthday(resident, voice, Times("birthday"))),
        null when !identified => AtTheDoor(),
        null => AtTheBed(),
        _ when current is { Acts.Count: > MostActs } => GiveUp(),
        Wants.Confirmation or Wants.SayingAgain => Confirm(standing.Wants, standing.ReadBack),
        Wants.Digits => IsMine(standing.Sign) ? Say(ActKind.Reading, Sayings.Digits(current!.Number)) : Cancel(),
        Wants.Value => IsMine(standing.Sign) ? Say(ActKind.Reading, sayings.Value(current!.Number, voice, current.Acts.Count)) : Cancel(),
        Wants.WholeReading => AtTheBed(),
        Wants.Count => current is { Counted: { } counted } ? Say(ActKind.Reading, sayings.Count(counted, voice, current.Acts.Count)) : Cancel(),
        Wants.NotTaken => ConfirmNotTaken(),
        Wants.JustNow => Heard("yes"),
        Wants.TryAgain => Question(yes: true),
        Wants.Symptom => Question(Steady.Number(voice, standing.Text, current?.Sentence ?? "") % 100 < 100 * habits.Symptom),
        Wants.Unwanted => Question(yes: false),
        Wants.Continue => Command("continue"),
        _ => AtTheBed(),
    };

    private AideMove AtTheDoor()
    {
        identified = false;
        triesAtTheDoor++;
        int times = Times("place");
        return Identity(sayings.Place(times % 3 == 2 ? resident with { Bed = null } : resident, voice, times));
    }

    private AideMove AtTheBed()
    {
        if (current is null)
        {
            if (plan.Next() is not { } next)
            {
                return plan.Rests ? new AideMove.Wait() : Goodbye();
            }

            current = next;
            watcher.Begins(current);
        }

        if (current.Acts.Count > MostActs)
        {
            return GiveUp();
        }

        return Before() ?? (!current.WithTones ? Say(ActKind.Reading, Wording(current)) : Say(ActKind.Command, current.Sentence));
    }

    // What was not understood is said another way.
    private string Wording(Dictation reading) => reading.Acts.Count(a => a.Kind == ActKind.Reading) is > 0 and var times && reading is { Refused: false, Counted: null }
        ? sayings.Reading(reading.Truth, voice, times)
        : reading.Sentence;

    private AideMove Confirm(Wants wants, Measured? readBack)
    {
        bool right = readBack is null || (current is { Refused: false } && HasSaidIt && (readBack.ReadsBack(current.Truth) || readBack.Is(current.Truth)));
        if (!right && Notices(standing!.Text))
        {
            return InsteadOfAnAnswer() ?? Refuse(wants, readBack!);
        }

        if (current is null)
        {
            return Cancel();
        }

        return InsteadOfAnAnswer() ?? (wants == Wants.SayingAgain
            ? Say(right ? ActKind.SecondSaying : ActKind.Reading, Sayings.Digits(current.Number))
            : Say(ActKind.Yes, sayings.Answer(true, voice, random.Next(2))));
    }

    // Another sign, another way of taking it, or nothing of hers: dropped and said anew. Another number is corrected; where it was
    // counted that would be ambiguous, for the program may want what was counted or what it makes.
    private AideMove.Sound Refuse(Wants wants, Measured readBack)
    {
        if (current is not { Refused: false } || !HasSaidIt || readBack.Sign != current.Truth.Sign || readBack.SameNumber(current.Truth)
            || current.Counted is not null)
        {
            return Cancel();
        }

        if (wants == Wants.SayingAgain)
        {
            return random.NextDouble() < habits.SaysOverWrongReadBack ? Say(ActKind.Reading, Sayings.Digits(current.Truth)) : Cancel();
        }

        return random.NextDouble() < habits.CorrectInOneBreath ? Say(ActKind.No, sayings.Correction(current.Truth, voice, current.Acts.Count))
            : Say(ActKind.No, sayings.Answer(false, voice, random.Next(2)));
    }

    private AideMove ConfirmNotTaken()
    {
        bool right = current is { Refused: true } && standing!.NotTaken == $"{current.Truth.Sign}, refused";
        return right || (current is not null && !Notices(standing!.Text))
            ? InsteadOfAnAnswer() ?? Say(ActKind.Yes, sayings.Answer(true, voice, random.Next(2)))
            : Say(ActKind.No, sayings.Answer(false, voice, random.Next(2)));
    }

    private bool Notices(string text)
    {
        if (current is null)
        {
            return true;
        }

        if (!current.WrongReadBacks.TryGetValue(text, out bool notices))
        {
            notices = random.NextDouble() >= habits.MissRate;
            current.WrongReadBacks.Add(text, notices);
        }

        return notices;
    }

    private AideMove.Sound Question(bool yes)
    {
        string words = sayings.Answer(yes, voice, random.Next(2));
        if (current is null)
        {
            return Heard(words);
        }

        current.Acts.Add(new Act(ActKind.Answer, !current.Answered.Add(standing!.Text.Split(' ')[^1])));
        return Heard(words);
    }

    private bool HasSaidIt => current is { WasSaid: true };

    private bool IsMine(string? sign) => current is { Refused: false } && HasSaidIt && (sign is null || sign == current.Truth.Sign);

    private AideMove GiveUp()
    {
        bool asked = standing is not null;
        standing = null;
        End(heardSaved: false);
        return asked ? Command("cancel") : AtTheBed();
    }

    private AideMove.Sound Goodbye()
    {
        goodbyes++;
        return Command("goodbye");
    }

    private AideMove.Sound Cancel()
    {
        tryAgainAfterCancel = true;
        return Command("cancel");
    }

    private AideMove.Sound Command(string words)
    {
        current?.Acts.Add(new Act(ActKind.Command, true));
        return Heard(words);
    }

    private AideMove.Sound Say(ActKind kind, string words)
    {
        bool again = current!.Acts.Any(a => a.Kind == kind) || kind == ActKind.No;
        current.Acts.Add(new Act(kind, again));
        return Heard(words);
    }

    private AideMove Identity(string words)
    {
        current?.Acts.Add(new Act(ActKind.Identity, false));
        return atTheKeys ? new AideMove.Types(words) : Heard(words);
    }

    private AideMove.Sound Heard(string words) => new(new Utterance(voice, words, Variant));

    private int Variant => random.Next(Variants);

    private string Any(IReadOnlyList<string> texts) => texts[random.Next(texts.Count)];

    private int Times(string what)
    {
        int times = saidAtTheDoor.GetValueOrDefault(what);
        saidAtTheDoor[what] = times + 1;
        return times;
    }
}
