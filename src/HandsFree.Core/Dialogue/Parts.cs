using HandsFree.Core.Residents;
using HandsFree.Core.Rules;

namespace HandsFree.Core.Dialogue;

/// <summary>What the dialogue looks things up in; nothing of it changes during a session.</summary>
internal sealed record Parts(IRulebook Rules, Roster Roster, DialogueSettings Settings);
