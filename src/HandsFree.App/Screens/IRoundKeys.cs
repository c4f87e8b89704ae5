namespace HandsFree.App.Screens;

/// <summary>What a screen does for whoever types.</summary>
internal interface IRoundKeys
{
    /// <summary>A sentence, with the meaning that it has when it is spoken.</summary>
    void Type(string text);

    /// <summary>The microphone's key.</summary>
    void Talk();

    /// <summary>Ends the program; what is saved stays, and the round goes on at the next start.</summary>
    void Leave();
}
