namespace HandsFree.Core.Dialogue;

/// <summary>The grammars that a state can listen with. A state listens only for what it can use.</summary>
public enum ListeningKind
{
    /// <summary>Nothing: the microphone's speech is dropped.</summary>
    Nothing,

    /// <summary>Commands alone.</summary>
    Commands,

    /// <summary>Room and bed, date of birth, band or photo number, the handover's first words, commands.</summary>
    Identity,

    /// <summary>Date of birth, band or photo number, either of them as digits without a label, room and bed, commands.</summary>
    SecondIdentifier,

    /// <summary>Yes and no, commands.</summary>
    YesNo,

    /// <summary>Yes and no, "before" for no, commands.</summary>
    NowOrBefore,

    /// <summary>Readings, qualifiers, not taken, guesses, counting, commands; with an awaited sign also its bare value.</summary>
    Readings,

    /// <summary>The bare value of the awaited sign, digit by digit or not, the whole reading, qualifiers, not taken, guesses, counting,
    /// no, commands; never yes.</summary>
    Value,

    /// <summary>Yes, no, a correction in one breath for the awaited sign, its qualifiers, commands.</summary>
    Confirmation,

    /// <summary>The count, uneven, thirty or sixty seconds, commands.</summary>
    Count,

    /// <summary>Questions of the handover, commands.</summary>
    Handover,
}
