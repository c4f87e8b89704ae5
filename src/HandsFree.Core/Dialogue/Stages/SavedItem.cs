using System.Collections.Immutable;
using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Dialogue;

/// <summary>Something saved for a resident in this round, so that it can be undone or said more about.</summary>
/// <param name="Events">The ids of its events, the first is the thing itself.</param>
/// <param name="Sign">Which vital sign, or null.</param>
/// <param name="Reading">The reading, where it is one.</param>
/// <param name="Text">What was read back.</param>
/// <param name="Before">The set before it, to which an undo returns.</param>
internal sealed record SavedItem(ImmutableList<string> Events, VitalSign? Sign, ReadingRecorded? Reading, string Text, ResidentSet Before);
