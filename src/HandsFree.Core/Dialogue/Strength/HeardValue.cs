using System.Collections.Immutable;
using HandsFree.Core.Hearings;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Dialogue;

/// <summary>One hearing of a value.</summary>
/// <param name="Sound">Its number words, as <see cref="NumberSound.Of"/> writes them.</param>
/// <param name="Possible">What it may have been, the value heard first.</param>
internal sealed record HeardValue(string Sound, ImmutableList<Possible<Quantity>> Possible);
