namespace HandsFree.Core.Residents;

/// <summary>A test that is done on order alone.</summary>
/// <param name="OrderedBy">Who ordered it.</param>
/// <param name="OrderedOn">When.</param>
public sealed record OrderedTest(string OrderedBy, DateOnly OrderedOn);
