using HandsFree.Store.Keys;

namespace HandsFree.App.Session;

/// <summary>Tells whether it is she who wants to go on with a locked session. Wrong tries are counted and make wait.</summary>
internal interface ISessionKey
{
    /// <summary>A PIN that was typed; a text that can't be one is wrong and not counted.</summary>
    PersonCheck Typed(string text);

    /// <summary>Digits that were spoken.</summary>
    PersonCheck Spoken(string digits);
}
