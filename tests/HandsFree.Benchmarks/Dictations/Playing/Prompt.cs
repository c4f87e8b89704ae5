using System.Text.RegularExpressions;
using HandsFree.Benchmarks.Dictations.Saying;

namespace HandsFree.Benchmarks.Dictations.Playing;

/// <summary>One text of the program, as the aide understands it: by its words alone.</summary>
internal sealed partial record Prompt
{
    private static readonly (Wants Wants, string Pattern)[] Asking =
    [
        (Wants.Name, @"^.+\? Look first\.|^(.* )?Is this .+\?|^Look at the band or the photo"),
        (Wants.Birthday, @"^Day and month of birth\?|^Say the birthday\.|^The birthday is not enough here\."),
        (Wants.Place, @"^Room and bed\?|^Say room and bed\.|^First the room and the bed\.|^Nobody is on the list in |^Which bed\?|^Room \d+ has "),
        (Wants.Count, @"^How many( did you count)?\?|^Say the number that you counted\.|^\(CountEnds\)$"),
        (Wants.Counting, @"^Count the pulse for (thirty|sixty) seconds, from the tone\.|^\(CountBegins\)$"),
        (Wants.TryAgain, @"^Try again\?|^Try again, or write it on paper\?"),
        (Wants.JustNow, @"^Taken since you came back\?|^Say yes or before\."),
        (Wants.Symptom, @"^Short of breath\?|^Chest pain, headache, or weakness\?|^(Chest pain|Headache|Weakness)\?"),
        (Wants.Unwanted, @"^Remove |^Tell the nurse that you are worried\?|^Did the resident wake to your voice\?"),
        (Wants.SayingAgain, @"^Say the number again, digit by digit\.|^Say again what you counted, digit by digit\.|^Say it once more\."),
        (Wants.Digits, @"^Say the digits, one by one\."),
        (Wants.Value, @"^Say (each digit of )?the (?<sign>temperature|pulse|respirations|blood pressure|oxygen|weight|pain)\."),
        (Wants.WholeReading, @"^Say the whole reading\.|^Say what it is, then the number\."),
        (Wants.Continue, @"^Waiting\."),
        (Wants.Options, @"^You can say: "),
    ];

    // Said beside a question, or without any; the aide needs to do nothing about it.
    private const string Remarks =
        @"^\((NotSaved)\)$|^(Nothing open|Ready|Saved|Cancelled|Removed|Noted|Uneven|All right|Goodbye|Not saved|Not sure|Not understood|Please answer|Left open)\.$"
        + @"|^(I heard nothing|I heard only a part|That does not match|Agreeing is not enough|That is not possible|That is another number|A guess can't be saved)\.$"
        + @"|^Count, or measure again\.$|^Yes or no\?$|^Room \d+( bed [A-D])?\.$| not taken yet|^Tell the nurse (before you leave|this shift): |^Open from before: |^Open: | again in .+\.$|^Rechecks? waits?: |^Is that what you said\?$|^Was that you\?$|^Look first\.$|^Example: |^Or say band and its number\.$"
        + @"|^Use the call light now\.$|^Tell the nurse (before you leave|this shift)\.$|^I cannot call\.$|^Use the call light\.$|^Do not use (the left|the right|this) arm\.$"
        + @"|, is not possible\.$|is left open\.$| left open| to recheck|^No readings for |^Noted for the reading that comes\.$|^Nothing is open\.$|^All is taken\.$"
        + @"|^The rest is over\.$|^Now the |^The .+ waits\.$|^(Temperature|Pulse|Respirations|Blood pressure|Oxygen)\?$|^Saved: |^Careful, two residents have this name\."
        + @"|^Blood pressure in .+ minutes?\.$|^The round goes on\.$|^Still to take: |^Each digit by itself\.$|^Count until the tone\.$|^Next: |^Nobody is left in the round\.$"
        + @"|^Moved here lately, |^On the list as away, |^(Machine|By hand), for this round\.$|^The rest (begins now|is done)\.$"
        + @"|^Nothing is saved for this resident\.$|^The record does not work\.|^Tell your supervisor\.|^Write it on paper\.";

    /// <summary>The text.</summary>
    public required string Text { get; init; }

    /// <summary>What it asks for.</summary>
    public Wants Wants { get; private init; }

    /// <summary>Whether it lists what can be said.</summary>
    public bool HasOptions => Text.Contains("You can say: ", StringComparison.Ordinal);

    /// <summary>The reading that it reads back, or null.</summary>
    public Measured? ReadBack { get; private init; }

    /// <summary>The sign whose number is asked for, or null.</summary>
    public string? Sign { get; private init; }

    /// <summary>"pulse, refused", where not taken was read back.</summary>
    public string? NotTaken { get; private init; }

    /// <summary>Whether it says that something was saved.</summary>
    public bool Saved { get; private init; }

    /// <summary>Whether it says that a value was left, or dropped.</summary>
    public bool Dropped { get; private init; }

    /// <summary>Whether the resident is ready for readings.</summary>
    public bool Ready { get; private init; }

    /// <summary>Whether a rest that was waited for is over.</summary>
    public bool RestOver { get; private init; }

    /// <summary>How long is to be counted, seconds; null where it does not say.</summary>
    public int? CountSeconds => Text.Contains("for sixty seconds, from the tone", StringComparison.Ordinal) ? 60
        : Text.Contains("for thirty seconds, from the tone", StringComparison.Ordinal) ? 30
        : null;

    /// <summary>What is to be done before the next reading, or empty.</summary>
    public string Instruction { get; private init; } = "";

    /// <summary>Sentences that she can make nothing of; after "Saved." they are instructions.</summary>
    public IReadOnlyList<string> Strange { get; private init; } = [];

    /// <summary>Understands a text.</summary>
    public static Prompt Of(string text)
    {
        string plain = Prefix().Replace(text, "") switch
        {
            "(Saved)" => "Saved.",
            "(Ready)" => "Ready.",
            var words => words,
        };
        Prompt prompt = new() { Text = text };
        List<string> strange = [];
        foreach (string sentence in SentenceEnd().Split(plain).Where(s => s.Length > 0))
        {
            if (prompt.With(sentence) is { } more)
            {
                prompt = more;
            }
            else if (!Regex.IsMatch(sentence, Remarks))
            {
                strange.Add(sentence);
            }
        }

        bool saved = plain.StartsWith("Saved.", StringComparison.Ordinal) || plain.StartsWith("Nothing open.", StringComparison.Ordinal);
        return prompt with
        {
            Saved = saved,
            Dropped = plain.StartsWith("Cancelled.", StringComparison.Ordinal) || plain.Contains("is left open.", StringComparison.Ordinal) || plain.Contains("Left open.", StringComparison.Ordinal),
            Ready = plain.StartsWith("Ready.", StringComparison.Ordinal),
            RestOver = plain.StartsWith("The rest is over.", StringComparison.Ordinal),
            Instruction = saved || plain.StartsWith("Ready.", StringComparison.Ordinal) || plain.Contains("is not possible.", StringComparison.Ordinal) ? string.Join(' ', strange) : "",
            Strange = saved ? [] : strange,
        };
    }

    private Prompt? With(string sentence)
    {
        // The name and "Look first" are two sentences of one question.
        if (Text.Contains("? Look first.", StringComparison.Ordinal) && sentence.EndsWith('?'))
        {
            return this with { Wants = Wants.Name };
        }

        foreach (var (wants, pattern) in Asking)
        {
            if (Regex.Match(sentence, pattern) is { Success: true } match)
            {
                return Asks(wants, match.Groups["sign"] is { Success: true } sign ? sign.Value : null);
            }
        }

        if (!sentence.EndsWith(", is not possible.", StringComparison.Ordinal) && ReadBackEar.Understand(sentence.TrimEnd('.')) is { } readBack)
        {
            return this with { ReadBack = readBack, Wants = Wants.Confirmation };
        }

        return NotTakenReadBack().Match(sentence) is { Success: true } missing
            ? this with { NotTaken = missing.Groups["what"].Value.ToLowerInvariant(), Wants = Wants.NotTaken }
            : null;
    }

    // "You can say" beside a question, or a read-back, does not replace it.
    private Prompt Asks(Wants wants, string? sign) =>
        wants == Wants.Options && Wants != Wants.Nothing ? this : this with { Wants = wants, Sign = sign ?? Sign };

    [GeneratedRegex(@"^(Again: |First: )+")]
    private static partial Regex Prefix();

    [GeneratedRegex(@"(?<=[.?!])\s+")]
    private static partial Regex SentenceEnd();

    [GeneratedRegex(@"^(?<what>(temperature|pulse|respirations|blood pressure|oxygen|weight|pain|all that is open), (not taken|refused|declined|asleep|not in the room|equipment missing|could not obtain))\.$", RegexOptions.IgnoreCase)]
    private static partial Regex NotTakenReadBack();
}
