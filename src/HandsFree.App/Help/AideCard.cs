using System.Text;
using HandsFree.Pages.Cards;

namespace HandsFree.App.Help;

/// <summary>The aide's card: what to say, what is heard, what to do when it does not hear.</summary>
internal static class AideCard
{
    /// <summary>The card.</summary>
    public static Card Content { get; } = new(
        "HandsFree: the aide's card",
        [
            new("Who it is",
            [
                new("room twelve bed b", "the resident; look, then \"yes\""),
                new("march third", "the birthday, day and month"),
                new("band four zero one one", "instead, where room mates hear"),
            ]),
            new("What you measured",
            [
                new("temperature ninety eight point six", ""),
                new("pulse seventy two", "add \"irregular\" where it is"),
                new("respirations sixteen", ""),
                new("blood pressure one eighteen over seventy six", "add \"left arm\", \"lying\""),
                new("oxygen ninety six", "add \"on two liters\""),
                new("weight one fifty four point three", ""),
                new("pain four", ""),
                new("count", "count the pulse with the tones"),
                new("refused", "it was not taken, and why"),
            ]),
            new("Your answer",
            [
                new("yes", "it is saved"),
                new("no", "it is not"),
                new("no eighty five", "the right number, in one breath"),
                new("repeat", "say it again"),
            ]),
        ],
        [
            new("What you hear",
            [
                new("high tone", "count from now"),
                new("low tone", "the count is over; say the number"),
                new("your number, digit by digit", "is it what you said?"),
                new("\"Say the number again\"", "it is doubtful, or it is for the nurse: say it once more"),
                new("two rising tones", "saved, or ready; before this it is not in the record"),
                new("three low tones", "not saved; listen to the words"),
                new("\"Tell the nurse now.\"", "you go and tell her; the program cannot"),
            ]),
            new("When it does not hear you",
            [
                new("1", "Look at the screen: is the microphone open? Space opens it."),
                new("2", "Closer to the microphone. Say the digits one by one."),
                new("3", "Say \"options\": it says what you can say now."),
                new("4", "Type it and press Enter: it means the same."),
                new("5", "Write it on paper, and enter it later."),
            ]),
            new("Always",
            [
                new("Emergency", "Use the call light. This program cannot call anybody."),
                new("NOT SAVED", "Write it on paper. Tell your supervisor."),
                new("A guess", "is not a reading. Say \"count\"."),
                new("Stop", "leaves the resident; what was saved stays."),
            ]),
        ]);

    /// <summary>The card as lines for the terminal.</summary>
    public static string Text()
    {
        StringBuilder text = new($"{Content.Title.ToUpperInvariant()}\n");
        foreach (CardPart part in Content.Front.Concat(Content.Back))
        {
            text.Append($"\n{part.Heading}\n");
            int widest = part.Lines.Max(line => line.Say.Length);
            foreach (CardLine line in part.Lines)
            {
                text.Append($"  {line.Say.PadRight(widest)}  {line.Means}".TrimEnd()).Append('\n');
            }
        }

        return text.Append("\nFor paper: handsfree help card --page FILE.html\n").ToString();
    }
}
