using HandsFree.Benchmarks.Dictations.Saying;

namespace HandsFree.Benchmarks.Dictations.Playing;

/// <summary>What the aide has to do at a resident: the five readings of a set in any order, some more, and what the program asks to be
/// measured again.</summary>
internal sealed class VisitPlan
{
    private const int MostRechecks = 2;

    private readonly IRepertoire repertoire;
    private readonly string voice;
    private readonly List<Dictation> open = [];
    private readonly Dictionary<string, int> rechecks = [];

    /// <summary>Draws a plan.</summary>
    public VisitPlan(IRepertoire repertoire, Habits habits, string voice, Sayings sayings, Random random)
    {
        (this.repertoire, this.voice) = (repertoire, voice);
        string[] signs = ["temperature", "pulse", "respirations", "blood pressure", "oxygen"];
        random.Shuffle(signs);
        foreach (string sign in signs.Concat(random.NextDouble() < habits.Extra ? ["weight"] : []).Concat(random.NextDouble() < habits.Extra ? ["pain"] : []))
        {
            SpokenReading drawn = repertoire.Draw(sign, voice, random);
            double chance = random.NextDouble();
            int counted = 28 + random.Next(20);
            open.Add(chance < habits.Refused
                ? new Dictation { Truth = drawn.Value, Sentence = sayings.Refused(sign, voice), Refused = true }
                : sign == "pulse" && random.NextDouble() < habits.CountWithTones
                    ? new Dictation { Truth = new Measured("pulse", 2 * counted), Sentence = "count", Counted = counted, WithTones = true }
                    : new Dictation { Truth = drawn.Value, Sentence = drawn.Sentence, Counted = drawn.Counted });
        }
    }

    /// <summary>Whether something waits for the end of a rest.</summary>
    public bool Rests => open.Count > 0;

    /// <summary>Whether nothing is left to do.</summary>
    public bool IsDone => open.Count == 0;

    /// <summary>The next one that can be done; null where none can.</summary>
    public Dictation? Next()
    {
        Dictation? next = open.FirstOrDefault(d => !d.AfterRest);
        if (next is not null)
        {
            open.Remove(next);
        }

        return next;
    }

    /// <summary>The rest is over.</summary>
    public void RestIsOver() => open.ForEach(d => d.AfterRest = false);

    /// <summary>Something was saved; what the program says then may ask for a second measurement.</summary>
    public void After(Dictation saved, string instruction, Random random)
    {
        if (instruction.Length == 0 || instruction.Contains("four hours", StringComparison.Ordinal) || saved.Refused)
        {
            return;
        }

        string sign = saved.Truth.Sign;
        int before = rechecks.GetValueOrDefault(sign);
        if (before == MostRechecks)
        {
            return;
        }

        rechecks[sign] = before + 1;
        SpokenReading drawn = repertoire.Draw(sign, voice, random);
        bool digits = instruction.Contains("digit by digit", StringComparison.Ordinal) && drawn is { Counted: null, Value.Ways: "" };
        open.Add(new Dictation
        {
            Truth = drawn.Value,
            Sentence = digits ? $"{sign} {DigitNames.Of(drawn.Value)}" : drawn.Sentence,
            Counted = drawn.Counted,
            Recheck = true,
            AfterRest = instruction.Contains("minute", StringComparison.Ordinal),
        });
    }
}
