using HandsFree.App.Homes;
using HandsFree.Core.Dialogue;
using HandsFree.Speech;

namespace HandsFree.App.Session;

/// <summary>What a home's settings mean for a session.</summary>
internal static class HomeSession
{
    /// <summary>The dialogue of a home, with the engine that hears.</summary>
    /// <param name="home">Its rules, residents and settings.</param>
    /// <param name="recognizer">A weak engine has every value said digit by digit (safety 13).</param>
    /// <param name="grammars">For the sample phrases.</param>
    /// <param name="now">For the shift that the handover by voice covers.</param>
    public static DialogueMachine Machine(Home home, IRecognizer recognizer, ListeningGrammars grammars, DateTimeOffset now) =>
        new(home.Rules, home.Roster, home.Settings.ForDialogue() with
        {
            DigitByDigit = IsWeak(recognizer),
            ShiftBegan = home.Settings.ShiftBegan(now),
            SamplePhrases = grammars.Examples,
        });

    /// <summary>An engine whose probabilities are not measured has every value said digit by digit, and is spoken to with a key (safety 13).</summary>
    public static bool IsWeak(IRecognizer recognizer) => recognizer.Name is Hearing.EngineNames.Vosk;

    /// <summary>The times and units of a home.</summary>
    public static SessionSettings Settings(Home home) => new()
    {
        AnswerQuiet = home.Settings.AnswerAwaited,
        LeadQuiet = home.Settings.LeadAfter,
        LockAfter = home.Settings.LockAfter,
        WeightUnit = home.Settings.WeightUnit,
    };
}
