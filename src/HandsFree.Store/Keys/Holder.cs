using HandsFree.Core.People;

namespace HandsFree.Store.Keys;

/// <summary>The person who unlocked a journal.</summary>
/// <param name="Person">The id.</param>
/// <param name="Role">What the person may do.</param>
public sealed record Holder(string Person, Role Role);
